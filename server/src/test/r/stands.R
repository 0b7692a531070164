# Forecasts made stands with ets and tbats of R's package forecast, and prints their mean scaled
# pinball loss beside ours. Debian: r-cran-forecast. Usage: Rscript stands.R DIR [days a refit]
library(forecast)

args <- commandArgs(trailingOnly = TRUE)
folder <- args[1]
refit <- if (length(args) > 1) as.integer(args[2]) else 20L
probabilities <- c(.5, .75, .9, .95)
levels <- 2 * probabilities[-1] * 100 - 100

pinball <- function(q, value, came) {
  ifelse(came >= value, q * (came - value), (1 - q) * (value - came))
}

# One-sided quantiles are the upper ends of two-sided intervals; no count is below nothing.
quantiles <- function(future) {
  upper <- matrix(as.numeric(future$upper), ncol = length(levels))
  values <- cbind(as.numeric(future$mean), upper)
  values[values < 0] <- 0
  values
}

series_loss <- function(rows, series, method) {
  origins <- sort(unique(rows$origin))
  model <- NULL
  sum <- 0
  count <- 0
  for (i in seq_along(origins)) {
    known <- msts(series[seq_len(origins[i])], seasonal.periods = 6)
    if ((i - 1) %% refit == 0 || is.null(model)) {
      model <- if (method == "ets") ets(ts(known, frequency = 6)) else
        tbats(known, use.parallel = FALSE)
      fitted <- model
    } else {
      fitted <- if (method == "ets") {
        ets(ts(known, frequency = 6), model = model, use.initial.values = TRUE)
      } else tbats(known, model = model, use.parallel = FALSE)
    }
    values <- quantiles(forecast(fitted, h = 5, level = levels))
    here <- rows[rows$origin == origins[i], ]
    for (r in seq_len(nrow(here))) {
      v <- values[here$horizon[r], ]
      sum <- sum + sum(pinball(probabilities, v, here$came[r])) / here$scale[r]
      count <- count + length(probabilities)
    }
  }
  c(sum, count)
}

cat(sprintf("%-10s %8s %8s %8s %8s\n", "group", "ours", "ets", "tbats", "ratio"))
files <- list.files(folder, pattern = "-ours.csv$")
groups <- unique(sub("-[0-9]+-ours.csv$", "", files))
ratios <- c()
for (group in groups) {
  totals <- list(ours = c(0, 0), ets = c(0, 0), tbats = c(0, 0))
  for (file in files[startsWith(files, paste0(group, "-"))]) {
    ours <- read.csv(file.path(folder, file))
    sales <- read.csv(file.path(folder, sub("ours", "sales", file)), check.names = FALSE)
    for (name in names(sales)) {
      rows <- ours[ours$name == name, ]
      for (q in 1:4) {
        values <- rows[[c("q50", "q75", "q90", "q95")[q]]]
        totals$ours <- totals$ours +
          c(sum(pinball(probabilities[q], values, rows$came) / rows$scale), nrow(rows))
      }
      for (method in c("ets", "tbats")) {
        totals[[method]] <- totals[[method]] + series_loss(rows, sales[[name]], method)
      }
    }
  }
  loss <- sapply(totals, function(t) t[1] / t[2])
  ratio <- loss[["ours"]] / min(loss[["ets"]], loss[["tbats"]])
  ratios <- c(ratios, ratio)
  cat(sprintf("%-10s %8.4f %8.4f %8.4f %8.3f\n",
              group, loss[["ours"]], loss[["ets"]], loss[["tbats"]], ratio))
}
cat(sprintf("mean ratio to the better of the two: %.3f\n", mean(ratios)))
