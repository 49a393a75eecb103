# A second opinion by R on what Jumpwright computes: prints one line "name value" each.
# Needs r-base-core; psych and lme4 where they are installed. Arguments: folder of tables, file of one generated level series.
args <- commandArgs(trailingOnly = TRUE)
say <- function(name, value) cat(name, sprintf("%.10g", value), "\n")

fit <- StructTS(Nile, type = "level")
say("nile-walk", fit$coef[["level"]])
say("nile-noise", fit$coef[["epsilon"]])
smooth <- tsSmooth(fit)
say("nile-smooth-50", smooth[50])
say("nile-filter-100", fitted(fit)[100])

series <- read.csv(args[2])$value
fit <- StructTS(ts(series), type = "level")
say("made-walk", fit$coef[["level"]])
say("made-noise", fit$coef[["epsilon"]])
say("made-filter-last", fitted(fit)[length(series)])

# Shrout and Fleiss 1979, Psychol Bull 86:420-428, table of six targets and four judges.
judges <- matrix(c(9, 2, 5, 8, 6, 1, 3, 2, 8, 4, 6, 8, 7, 1, 2, 6, 10, 5, 6, 9, 6, 2, 4, 7), ncol = 4, byrow = TRUE)
if (requireNamespace("psych", quietly = TRUE)) {
  icc <- psych::ICC(judges, lmer = FALSE)$results
  for (i in 1:6) say(paste0("icc-", icc$type[i]), icc$ICC[i])
}

if (requireNamespace("lme4", quietly = TRUE)) {
  jumps <- read.csv(file.path(args[1], "jumps-four-occasions.csv"))
  jumps$athlete <- factor(jumps$athlete)
  jumps$occasion <- factor(jumps$occasion, levels = c("pre", "meso1", "meso2", "meso3"))
  model <- lme4::lmer(countermovement_jump_cm ~ occasion + (1 | athlete), data = jumps, REML = TRUE)
  say("lme4-intercept", lme4::fixef(model)[[1]])
  say("lme4-between", sqrt(as.numeric(lme4::VarCorr(model)$athlete)))
  say("lme4-within", sigma(model))
  say("lme4-reml", lme4::REMLcrit(model))
}
