package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What somebody types who wants a page to do what it should not. Made of the ways that OWASP's
 * cheat sheets on cross-site scripting and on formulas in CSV list, from memory. Stateless.
 */
final class HostileTexts {
    private static final List<String> TAGS =
            List.of(
                    "b",
                    "i",
                    "p",
                    "a",
                    "br",
                    "hr",
                    "img",
                    "svg",
                    "math",
                    "form",
                    "input",
                    "button",
                    "iframe",
                    "object",
                    "embed",
                    "base",
                    "meta",
                    "link",
                    "style",
                    "script",
                    "video",
                    "audio",
                    "details",
                    "marquee",
                    "body",
                    "html",
                    "template",
                    "noscript",
                    "select",
                    "textarea",
                    "title",
                    "table",
                    "dialog",
                    "slot",
                    "frameset",
                    "area");

    private static final List<String> EVENTS =
            List.of(
                    "onerror",
                    "onload",
                    "onclick",
                    "onfocus",
                    "onblur",
                    "oninput",
                    "ontoggle",
                    "onpointerenter",
                    "onmouseover",
                    "onanimationend",
                    "onbegin",
                    "onbeforetoggle");

    private static final List<String> SWITCHES =
            List.of(
                    "hx-get",
                    "hx-post",
                    "hx-on:click",
                    "hx-trigger",
                    "hx-vals",
                    "hx-swap-oob",
                    "hx-ext",
                    "data-hx-get",
                    "data-hx-on",
                    "ws-connect",
                    "ws-send",
                    "sse-connect",
                    "style",
                    "srcdoc",
                    "formaction",
                    "autofocus",
                    "data-print",
                    "is",
                    "slot",
                    "nonce");

    private static final List<String> ENTITIES =
            List.of(
                    "&lt;b&gt;",
                    "&#60;b&#62;",
                    "&#x3c;b>",
                    "&amp;lt;b",
                    "&lt",
                    "&quot;",
                    "&apos;",
                    "&NewLine;",
                    "&colon;",
                    "&#0;",
                    "&nbsp;",
                    "&zwj;",
                    "&unknown;",
                    "&",
                    "&&amp;");

    private static final List<String> ODD =
            List.of(
                    "\u202Egnp.exe",
                    "\u202Dabc",
                    "\u2066abc\u2069",
                    "\u2067abc",
                    "\u200Bab",
                    "\u200Fab",
                    "\uFEFFab",
                    "a\u0000b",
                    "a\u0007b",
                    "a\u001Bb",
                    "a\u0085b",
                    "a\u2028b",
                    "a\u2029b",
                    "a\uFFFEb",
                    "a\uD83Cb",
                    "a\u0300\u0301\u0302",
                    "${zq}",
                    "${7*7}",
                    "@{zq}",
                    "{{zq}}",
                    "{{7*7}}",
                    "#{zq}",
                    "<%= zq %>",
                    "!{var z = 1;}",
                    "@if(true)",
                    "@endif",
                    "{0}",
                    "{1} {0}",
                    "%s%n",
                    "\\u003cb",
                    "[[zq]]",
                    "`zq`",
                    "$(zq)",
                    "';zq();//",
                    "\";zq();//",
                    "\\';zq();//",
                    "*/zq()/*",
                    "</script>",
                    "</SCRIPT >",
                    "</style>",
                    "</textarea>",
                    "</title>",
                    "<!--",
                    "-->",
                    "<![CDATA[",
                    "]]>",
                    "<?xml?>",
                    "<!doctype html>",
                    "</",
                    "<",
                    ">",
                    "\"",
                    "'",
                    "' x=\"",
                    "\" autofocus onfocus=zq() x=\"",
                    "' onfocus=zq() '",
                    "\"><b>",
                    "javascript:zq()",
                    "JaVaScRiPt:zq()",
                    "data:text/html,zq",
                    "vbscript:zq",
                    "../../etc/passwd",
                    "%3Cscript%3E",
                    "%00",
                    "+ADw-script+AD4-",
                    "\u00BCb\u00BE",
                    "\uFF1Cb\uFF1E",
                    "<\u0000b>",
                    "<b\u00A0x>",
                    "<b/x>",
                    "< b>",
                    "<\nb>",
                    "<b\tonclick=zq()>");

    private static final List<String> FORMULAS =
            List.of(
                    "=1+1",
                    "+1+1",
                    "-1+1",
                    "@SUM(1)",
                    "=HYPERLINK(\"x\")",
                    "=cmd|'/c zq'!A1",
                    "\t=1+1",
                    "\r=1+1",
                    "'=1+1",
                    "=",
                    "+",
                    "-",
                    "@",
                    "\t",
                    "\r",
                    "-zq",
                    "+zq");

    private HostileTexts() {}

    /** All of them, each once. */
    static List<String> all() {
        Set<String> all = new LinkedHashSet<>();
        for (String tag : TAGS) {
            all.add("<" + tag + ">");
            all.add("</" + tag + ">");
            all.add("<" + tag + " onclick=zq()>");
            all.add("<" + tag + " src=zq: hx-get=/zq>");
        }
        for (String event : EVENTS) {
            all.add("<img src=zq: " + event + "=zq()>");
            all.add("\" " + event + "=\"zq()");
            all.add("' " + event + "='zq()");
            all.add("x " + event + "=zq() y");
        }
        for (String name : SWITCHES) {
            all.add("<b " + name + "=zq>");
            all.add("\" " + name + "=\"/zq");
            all.add("' " + name + "='/zq");
        }
        all.addAll(ENTITIES);
        all.addAll(ODD);
        all.addAll(FORMULAS);
        return new ArrayList<>(all);
    }
}
