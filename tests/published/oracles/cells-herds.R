# Averages, tank estimate, scores and milk loss of random herds by base R, for tests/published/cell-averages.test.ts.
# Run:  Rscript tests/published/oracles/cells-herds.R   (from the top of the repository)
# Writes cells-cows.csv (the cows) and cells-herds.csv (the figures) beside this file.
# R goes by natural and common logarithms and by weighted.mean, where the code under test goes by log2 and running sums.
set.seed(20240229)
folder <- "tests/published/oracles"
header <- sprintf("# %s, cells-herds.R, seed 20240229", R.version.string)
shortest <- function(x) ifelse(as.numeric(sprintf("%.15g", x)) == x, sprintf("%.15g", x), sprintf("%.17g", x))
write <- function(table, name) {
  path <- file.path(folder, paste0(name, ".csv"))
  writeLines(header, path)
  table[] <- lapply(table, shortest)
  suppressWarnings(write.table(table, path, append = TRUE, sep = ",", quote = FALSE, row.names = FALSE))
}
herds <- 600
cows <- do.call(rbind, lapply(1:herds, function(herd) {
  n <- sample(1:9, 1)
  # Lognormal counts, thousand cells/mL, standard deviation of the score 1.9; now and then the cap, the base, the limit.
  count <- pmin(9999, round(exp(rnorm(n, log(120), 1.9 * log(2))), sample(0:1, 1)))
  count <- ifelse(runif(n) < 0.05, sample(c(9999, 50, 200, 100), n, TRUE), pmax(1, count))
  data.frame(herd = herd, count = count, lactation = sample(1:6, n, TRUE), milk = round(runif(n, 5, 60), 1))
}))
pound <- 0.45359237
figures <- do.call(rbind, lapply(split(cows, cows$herd), function(h) {
  above <- pmax(0, log(h$count / 50)) # natural logarithms above 50 thousand
  first <- h$lactation == 1
  slope <- function(one, more) sum(above * ifelse(first, one, more))
  data.frame(
    herd = h$herd[1],
    arithmetic = mean(h$count),
    geometric = exp(mean(log(h$count))),
    score = mean(log10(h$count / 100) / log10(2) + 3),
    tank = weighted.mean(h$count, h$milk),
    extension = slope(0.75 * pound / log(2), 1.5 * pound / log(2)),
    hortetSeegers = slope(0.4 / log(2), 0.6 / log(2)),
    koldeweij = slope(1.29 / log(10), 2.04 / log(10)),
    luo = slope(0.83 / log(2), 0.83 / log(2)),
    potter = slope(1.6 / log(5), 1.6 / log(5))
  )
}))
write(cows, "cells-cows")
write(figures, "cells-herds")
