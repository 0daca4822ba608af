# Two rates compared through the binomial share of the first count, for tests/published/two-rates.test.ts.
# Run:  Rscript tests/published/oracles/two-rates.R   (from the top of the repository)
# Writes two-rates.csv beside this file. Base R alone.
set.seed(20240229)
path <- "tests/published/oracles/two-rates.csv"
shortest <- function(x) ifelse(as.numeric(sprintf("%.15g", x)) == x, sprintf("%.15g", x), sprintf("%.17g", x))
count <- 600

cases <- c(0, 1, 0, 2, 15, 41, 1e6, 5000, 30, sample(0:15, 200, TRUE), sample(0:300, 250, TRUE), sample(0:5000, 150, TRUE))
casesBefore <- c(1, 0, 7, 2, 30, 15, 1e6, 4500, 0, sample(0:15, 200, TRUE), sample(0:300, 250, TRUE), sample(0:5000, 150, TRUE))
atRisk <- c(10, 10, 90, 1, 19017, 28010, 1, 1000, 5, round(runif(count, 0.5, 500), 3))
atRiskBefore <- c(10, 10, 45, 1, 28010, 19017, 1, 900, 5, round(runif(count, 0.5, 500), 3))
both <- cases + casesBefore
kept <- both > 0
cases <- cases[kept]; casesBefore <- casesBefore[kept]; both <- both[kept]
atRisk <- atRisk[kept]; atRiskBefore <- atRiskBefore[kept]
expected <- atRisk / (atRisk + atRiskBefore)

# The tails as poisson.test gives them for two counts; pbinom is the same distribution with all digits.
few <- pbinom(cases, both, expected)
many <- pbinom(cases - 1, both, expected, lower.tail = FALSE)
checked <- t(mapply(function(a, b, s, t) sapply(c("less", "greater"), function(side)
  poisson.test(c(a, b), c(s, t), alternative = side)$p.value), cases, casesBefore, atRisk, atRiskBefore))
stopifnot(max(abs(checked - cbind(few, many))) < 1e-12)
chance <- pmin(1, 2 * pmin(few, many))

# Where poisson.test's limits of the ratio leave out 1, at 95 %, this chance is below 5 %, and nowhere else.
limits <- t(mapply(function(a, b, s, t) poisson.test(c(a, b), c(s, t))$conf.int[1:2], cases, casesBefore, atRisk, atRiskBefore))
stopifnot(all((limits[, 1] > 1 | limits[, 2] < 1) == (chance < 0.05)))

writeLines(sprintf("# %s, two-rates.R, seed 20240229", R.version.string), path)
table <- data.frame(cases, atRisk, casesBefore, atRiskBefore, chance)
table[] <- lapply(table, shortest)
suppressWarnings(write.table(table, path, append = TRUE, sep = ",", quote = FALSE, row.names = FALSE))
print(table[1:9, ])
