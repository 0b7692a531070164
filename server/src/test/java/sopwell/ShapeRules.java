package sopwell;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import javax.lang.model.element.Modifier;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import sopwell.SourceTree.Source;

/** Rules over the shape of Java source, read with the JDK's own parser. */
final class ShapeRules {
    private ShapeRules() {}

    static final int METHOD_LINES_MAX = 60;
    static final int PARAMETERS_MAX = 5;

    /** Methods over 60 lines, from their annotations to their closing brace. */
    static List<String> longMethods(List<Source> sources) {
        return parse(sources).stream().flatMap(scan -> scan.longMethods.stream()).toList();
    }

    /** Methods and constructors with more than 5 parameters; a record's header may have more. */
    static List<String> manyParameters(List<Source> sources) {
        return parse(sources).stream().flatMap(scan -> scan.manyParameters.stream()).toList();
    }

    /** Public types that do not say what they are. */
    static List<String> undocumented(List<Source> sources) {
        return parse(sources).stream().flatMap(scan -> scan.undocumented.stream()).toList();
    }

    /** Folders with sources and no {@code package-info.java}. */
    static List<String> unexplainedPackages(List<Source> sources) {
        TreeSet<String> folders = new TreeSet<>();
        sources.forEach(s -> folders.add(s.path().replaceFirst("/[^/]*$", "")));
        sources.stream()
                .filter(s -> s.name().equals("package-info.java"))
                .forEach(s -> folders.remove(s.path().replaceFirst("/[^/]*$", "")));
        return folders.stream().map(f -> f + ": needs a package-info.java").toList();
    }

    private static List<Scan> parse(List<Source> sources) {
        List<Held> files = sources.stream().map(Held::new).toList();
        JavacTask task =
                (JavacTask)
                        ToolProvider.getSystemJavaCompiler()
                                .getTask(null, null, null, List.of("-proc:none"), null, files);
        DocTrees trees = DocTrees.instance(task);
        List<Scan> scans = new ArrayList<>();
        try {
            for (CompilationUnitTree unit : task.parse()) {
                Scan scan = new Scan(unit, trees);
                scan.scan(unit, null);
                scans.add(scan);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return scans;
    }

    /** A source file that the parser reads from memory. */
    private static final class Held extends SimpleJavaFileObject {
        private final Source source;

        Held(Source source) {
            super(URI.create("string:///" + source.path()), JavaFileObject.Kind.SOURCE);
            this.source = source;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return source.text();
        }
    }

    /** One file's findings. */
    private static final class Scan extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final DocTrees trees;
        private final List<String> longMethods = new ArrayList<>();
        private final List<String> manyParameters = new ArrayList<>();
        private final List<String> undocumented = new ArrayList<>();

        Scan(CompilationUnitTree unit, DocTrees trees) {
            this.unit = unit;
            this.trees = trees;
        }

        @Override
        public Void visitMethod(MethodTree method, Void unused) {
            long lines = line(end(method)) - line(start(method)) + 1;
            if (lines > METHOD_LINES_MAX) {
                longMethods.add(where(method) + method.getName() + " has " + lines + " lines");
            }
            int parameters = method.getParameters().size();
            if (parameters > PARAMETERS_MAX && !isRecordHeader(method)) {
                String what = method.getName() + " has " + parameters + " parameters";
                manyParameters.add(where(method) + what + " -> make a record of them");
            }
            return super.visitMethod(method, null);
        }

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            boolean isPublic = type.getModifiers().getFlags().contains(Modifier.PUBLIC);
            DocCommentTree comment = trees.getDocCommentTree(getCurrentPath());
            if (isPublic && (comment == null || comment.getFirstSentence().isEmpty())) {
                undocumented.add(where(type) + type.getSimpleName() + " needs Javadoc");
            }
            return super.visitClass(type, null);
        }

        /** A constructor that repeats the components of its record adds no list of its own. */
        private boolean isRecordHeader(MethodTree method) {
            ClassTree type = (ClassTree) getCurrentPath().getParentPath().getLeaf();
            if (type.getKind() != Tree.Kind.RECORD || !method.getName().contentEquals("<init>")) {
                return false;
            }
            long components =
                    type.getMembers().stream()
                            .filter(member -> member instanceof VariableTree)
                            .map(member -> ((VariableTree) member).getModifiers().getFlags())
                            .filter(flags -> !flags.contains(Modifier.STATIC))
                            .count();
            return method.getParameters().size() == components;
        }

        private String where(Tree tree) {
            String path = unit.getSourceFile().toUri().getPath().substring(1);
            return path + ":" + line(start(tree)) + ": ";
        }

        private long start(Tree tree) {
            return positions().getStartPosition(unit, tree);
        }

        private long end(Tree tree) {
            return positions().getEndPosition(unit, tree);
        }

        private SourcePositions positions() {
            return trees.getSourcePositions();
        }

        private long line(long position) {
            LineMap map = unit.getLineMap();
            return map.getLineNumber(position);
        }
    }
}
