using Jumpwright.Quantities;
using Jumpwright.Statistics;

namespace Jumpwright.Calculators.Curves;

/// <summary>What is believed of the curves before the athlete's own trials, and how a choice is made.</summary>
public static class CurveNumbers
{
    /// <summary>A height is as good as the best when it loses no more than this.</summary>
    public static Coefficient Loss { get; } = new("curve-loss", 0.03, Unit.One, null, Bibliography.Get("house-rule"));

    /// <summary>… with this probability.</summary>
    public static Coefficient Sure { get; } = new("curve-sure", 0.99, Unit.One, null, Bibliography.Get("house-rule"));

    /// <summary>Steps between heights that are looked at, and the farthest step above the highest tested, m.</summary>
    public static Coefficient Step { get; } = new("curve-step", 0.10, Unit.Metre, null, Bibliography.Get("house-rule"));

    /// <summary>Trials of one test.</summary>
    public const int TrialsOfATest = 3;

    /// <summary>
    /// Index over drop height. Flat from 0.30 to 0.60 m and 18 % down at 0.91 m in trained adults (Addie); up from 0.20 to 0.35 m,
    /// level to 0.50 m in youths (Prieske). Trial-to-trial 11.2 % (Stratford), worth eight trials.
    /// </summary>
    public static CurvePrior Drop { get; } = new(0.42, 0.15, 0.05, 1.0, 2.0, 0.8, 11.2, 8);

    /// <summary>
    /// Power of loaded jumps over load, kg of load per kg of body mass: best at 0 to 0.4 in the literature (Swinton 2012;
    /// Suchomel 2019); 4 % trial to trial (house rule).
    /// </summary>
    public static CurvePrior Power { get; } = new(0.25, 0.25, -0.2, 1.2, 0.6, 0.8, 4, 8);

    /// <summary>
    /// Height over run-up speed, m/s: each athlete has a best speed; one sample ran 3.3 to 3.5 m/s. 5 % trial to trial. Wide, and a
    /// house rule.
    /// </summary>
    public static CurvePrior RunUp { get; } = new(4.0, 1.5, 0.5, 9.0, 0.04, 0.9, 5, 8);
}
