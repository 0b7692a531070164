package sopwell.prep.plan;

/** Amounts by their rank, found without putting all into order (Hoare's find, 1961). Stateless. */
final class Ranks {
    private Ranks() {}

    /** The smallest amount that reaches this share of them; changes their order. */
    static double reaching(double[] amounts, double share) {
        int rank = (int) Math.ceil(share * amounts.length) - 1;
        return at(amounts, Math.max(0, Math.min(amounts.length - 1, rank)));
    }

    private static double at(double[] amounts, int rank) {
        int low = 0;
        int high = amounts.length - 1;
        while (low < high) {
            double pivot = amounts[rank];
            int i = low;
            int j = high;
            while (i <= j) {
                while (amounts[i] < pivot) {
                    i++;
                }
                while (pivot < amounts[j]) {
                    j--;
                }
                if (i <= j) {
                    double other = amounts[i];
                    amounts[i] = amounts[j];
                    amounts[j] = other;
                    i++;
                    j--;
                }
            }
            low = j < rank ? i : low;
            high = rank < i ? j : high;
        }
        return amounts[rank];
    }
}
