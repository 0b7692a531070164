package sopwell.web.api;

import sopwell.web.Problem;

/** Ends the reading of a request with a problem. */
final class Refused extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Problem problem;

    Refused(Problem problem) {
        super(problem.detail());
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}
