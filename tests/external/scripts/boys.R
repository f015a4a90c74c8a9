# SPDX-License-Identifier: Apache-2.0
# Heads of Dutch boys (data set boys of the R package mice). Standard input: one band a line, low and high in mm.
# Answers: "band" with the expected number of boys of 10 years and more in it under a normal error of 3 mm (R's pnorm),
# "head" with age and mm for each boy of 5 years and more, and "group" with n, mean, sd and percentiles by age.
suppressMessages(library(mice))
bands <- as.matrix(read.table(file("stdin")))
measured <- boys[!is.na(boys$hc), ]
heads <- measured$hc[measured$age >= 10] * 10
for (i in seq_len(nrow(bands)))
  cat("band", sprintf("%.12f", sum(pnorm(bands[i, 2], heads, 3) - pnorm(bands[i, 1], heads, 3))), "\n")
old <- measured[measured$age >= 5, ]
cat(sprintf("head %.6f %.3f\n", old$age, old$hc * 10), sep = "")
for (ages in list(c(14, 15), c(15, 16), c(16, 17), c(17, 19))) {
  x <- measured$hc[measured$age >= ages[1] & measured$age < ages[2]] * 10
  cat("group", length(x), mean(x), sd(x), quantile(x, c(.05, .25, .5, .75, .95), type = 7), "\n")
}
