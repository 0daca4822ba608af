# Confidence limits, relative risks and sample sizes by R and epiR, for tests/published/statistics.test.ts.
# Run:  Rscript tests/published/oracles/statistics.R   (from the top of the repository)
# Writes wilson.csv, poisson.csv, incidence.csv, relative-risk.csv, sample-size.csv and normal.csv beside this file.
suppressPackageStartupMessages(library(epiR))
set.seed(20240229)
folder <- "tests/published/oracles"
header <- sprintf("# %s, epiR %s, statistics.R, seed 20240229", R.version.string, packageVersion("epiR"))
write <- function(table, name) {
  path <- file.path(folder, paste0(name, ".csv"))
  writeLines(header, path)
  table[] <- lapply(table, shortest)
  suppressWarnings(write.table(table, path, append = TRUE, sep = ",", quote = FALSE, row.names = FALSE))
}
# The shortest text that reads back as the same number.
shortest <- function(x) ifelse(as.numeric(sprintf("%.15g", x)) == x, sprintf("%.15g", x), sprintf("%.17g", x))
levels <- c(0.8, 0.9, 0.95, 0.99, 0.999)
count <- 600

# Wilson score limits: epi.conf(method = "wilson"); edge cases 0, all, 1 of 1, huge.
of <- c(1, 1, 2, 20, 20, 1e6, 1e6, 1e6, sample(1:30, 250, TRUE), sample(1:3000, 250, TRUE), sample(1:1e6, 100, TRUE))
cases <- c(0, 1, 1, 0, 20, 0, 1e6, 1, sapply(of[-(1:8)], function(n) sample(0:n, 1)))
level <- c(rep(0.95, 8), sample(levels, count, TRUE))
limits <- t(mapply(function(x, n, l) unlist(epi.conf(cbind(x, n), ctype = "prevalence", method = "wilson",
  conf.level = l)[c("lower", "upper")]), cases, of, level))
write(data.frame(cases, of, level, low = limits[, 1], high = limits[, 2]), "wilson")

# Exact Poisson limits: poisson.test of base R. epi.conf(ctype = "inc.rate", method = "exact") is the same interval.
cases <- c(0, 1, 2, 19, 20, 21, 1e5, 1e6, sample(0:15, 200, TRUE), sample(0:300, 250, TRUE), sample(0:1e5, 150, TRUE))
level <- c(rep(0.95, 8), sample(levels, count, TRUE))
# poisson.test solves by qgamma, which is asked here directly so that all digits are kept.
low <- ifelse(cases == 0, 0, qgamma((1 - level) / 2, cases))
high <- qgamma((1 + level) / 2, cases + 1)
checked <- t(mapply(function(x, l) poisson.test(x, conf.level = l)$conf.int[1:2], cases, level))
stopifnot(max(abs(checked - cbind(low, high)) / pmax(1, cases)) < 1e-12)
write(data.frame(cases, level, low, high), "poisson")

# Incidence rate per unit at risk with exact limits: epi.conf.
cases <- c(0, 1, 12, sample(0:80, count, TRUE))
atRisk <- c(85, 85, 85, round(runif(count, 0.5, 500), 3))
limits <- t(mapply(function(x, t) unlist(epi.conf(cbind(x, t), ctype = "inc.rate", method = "exact",
  conf.level = 0.95)), cases, atRisk))
write(data.frame(cases, atRisk, rate = limits[, 1], low = limits[, 2], high = limits[, 3]), "incidence")

# Relative risk with Wald limits: epi.2by2(method = "cohort.count"), strata Wald. No empty cell: R gives NaN there.
allWith <- c(2, 2, 5000, 1e6, sample(2:40, 300, TRUE), sample(2:4000, 300, TRUE))
allWithout <- c(2, 9, 5000, 1e6, sample(2:40, 300, TRUE), sample(2:4000, 300, TRUE))
inside <- function(n) if (n == 2) 1 else sample(1:(n - 1), 1)
affectedWith <- c(1, 1, 4999, 1, sapply(allWith[-(1:4)], inside))
affectedWithout <- c(1, 8, 1, 999999, sapply(allWithout[-(1:4)], inside))
level <- c(rep(0.95, 4), sample(levels, count, TRUE))
risk <- t(mapply(function(a, n1, c, n0, l) unlist(epi.2by2(c(a, n1 - a, c, n0 - c), method = "cohort.count",
  conf.level = l)$massoc.detail$RR.strata.wald[c("est", "lower", "upper")]),
  affectedWith, allWith, affectedWithout, allWithout, level))
write(data.frame(affectedWith, allWith, affectedWithout, allWithout, level, ratio = risk[, 1], low = risk[, 2],
  high = risk[, 3]), "relative-risk")

# Sample size with finite population: epi.sssimpleestb, absolute error, perfect test.
population <- c(1, 2, 100, 200, 500, 1000, 1e6, sample(1:2000, count, TRUE))
share <- c(0.5, 0.5, 0.3, 0.3, 0.3, 0.3, 0.5, round(runif(count, 0.01, 0.99), 2))
margin <- c(0.05, 0.05, 0.05, 0.05, 0.05, 0.05, 0.01, round(runif(count, 0.01, 0.3), 2))
level <- c(rep(0.95, 7), sample(levels, count, TRUE))
size <- mapply(function(N, p, d, l) epi.sssimpleestb(N = N, Py = p, epsilon = d, error = "absolute", se = 1, sp = 1,
  conf.level = l), population, share, margin, level)
write(data.frame(population, share, margin, level, size), "sample-size")

# Normal quantiles: qnorm.
probability <- c(1e-10, 0.075, 0.925, 0.5, 1 - 1e-10, runif(count), 10^runif(100, -9, -2))
write(data.frame(probability, quantile = qnorm(probability)), "normal")
