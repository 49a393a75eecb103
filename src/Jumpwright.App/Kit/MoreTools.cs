using System.Collections.Immutable;
using Jumpwright.Calculators;
using Jumpwright.Calculators.Bounding;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Deciding;
using Jumpwright.Calculators.Demands;
using Jumpwright.Calculators.Landings;
using Jumpwright.Calculators.Responses;
using Jumpwright.Calculators.Springs;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>The calculators whose answer is a number or a curve, not a set-up.</summary>
internal static class MoreTools
{
    private const string NotAllowing =
        "A calculator allows nothing: the athlete's ladder, limits and restrictions decide.";

    public static ImmutableArray<KitTool> All { get; } =
    [
        new(
            "drop-height",
            "Drop height",
            DropCurves.Basis,
            [
                new(
                    "jumps",
                    "Drop jumps, drop m:index m/s",
                    "",
                    "0.20:1.42, 0.20:1.47, 0.20:1.44, 0.30:1.60, 0.30:1.55, 0.30:1.63, 0.40:1.66, 0.40:1.58, 0.40:1.64"
                ),
                new(
                    "contacts",
                    "The same, drop m:contact s",
                    "",
                    "0.20:0.19, 0.20:0.19, 0.20:0.20, 0.30:0.20, 0.30:0.20, 0.30:0.20, 0.40:0.21, 0.40:0.22, 0.40:0.21"
                ),
                new("limit", "Highest that limits allow", "m", "0.50"),
                new("ceiling", "Contact ceiling", "s", "0.25"),
            ],
            DropHeight
        ),
        new(
            "landing",
            "Landing force",
            LandingForces.Basis,
            [
                new("athlete", "Athlete's mass", "kg", "70"),
                new("landings", "Landings, drop m:peak N", "", "0.20:1900, 0.20:2000, 0.30:2450, 0.30:2350, 0.40:2800"),
                new("drop", "Drop asked about", "m", "0.45"),
                new("limit", "Highest that limits allow (may be empty)", "m", ""),
            ],
            Landing
        ),
        new(
            "maximum",
            "Estimated maximum",
            LoadVelocities.Basis,
            [
                new("lifts", "Lifts, load kg:mean velocity m/s", "", "60:0.95, 80:0.78, 100:0.60, 110:0.52"),
                new("velocity", "Mean velocity at the maximum", "m/s", "0.32"),
                new("doubt", "its ±", "m/s", "0.06"),
                new("lift", "The lift is", "", "another", "another", "full squat"),
            ],
            Maximum
        ),
        new(
            "force-velocity",
            "Force and velocity",
            ForceVelocityProfiles.Basis,
            [
                new("athlete", "Athlete's mass", "kg", "75"),
                new("distance", "Push-off distance", "m", "0.40"),
                new("jumps", "Squat jumps, load kg:height m", "", "0:0.36, 20:0.28, 40:0.215, 60:0.165, 80:0.12"),
            ],
            ForceVelocity
        ),
        new(
            "spring",
            "Springs",
            SpringRates.Basis,
            [
                new("athlete", "Athlete's mass", "kg", "70"),
                new("contact", "Contact", "s", "0.20"),
                new("flight", "Flight after it", "s", "0.50"),
            ],
            t =>
                Plain(
                    SpringRates.Of(new SpringInput(t.Number("athlete"), t.Number("contact"), t.Number("flight"))),
                    [(t.Number("contact"), t.Number("flight"))],
                    "contact, s",
                    "flight, s",
                    "One rebound: its flight over its contact."
                )
        ),
        new(
            "bound",
            "How far above what was measured",
            Bounds.Basis,
            [
                new("of", "What", "", "load", "load", "run-up speed"),
                new("measured", "Measured, number:trial", "", "20:1, 30:2, 40:3"),
                new("asked", "Asked about (may be empty)", "kg or m/s", "42.5"),
            ],
            t =>
                Plain(
                    Bounds.Of(
                        new BoundInput(
                            t.Text("of") == "load" ? BoundOf.ExternalLoad : BoundOf.RunUpSpeed,
                            [.. t.Pairs("measured").Select(p => p.A)],
                            t.Maybe("asked")
                        )
                    ),
                    [.. t.Pairs("measured").Select(p => (p.B, p.A))],
                    "trial",
                    t.Text("of") == "load" ? "load, kg" : "speed, m/s",
                    "What was measured, trial by trial."
                )
        ),
        new(
            "trials",
            "How many more trials",
            TrialsNeeded.Basis,
            [
                new("mean", "Mean so far", "", "36.0"),
                new("threshold", "Held against", "", "35.0"),
                new("trials", "Trials so far", "", "3"),
                new("sd", "SD from trial to trial", "", "1.2"),
                new("shared", "Doubt that more trials don't lessen", "", "0.3"),
                new("wished", "Confidence wished", "", "0.9"),
            ],
            t =>
                Plain(
                    TrialsNeeded.Of(
                        new MoreTrialsInput(
                            t.Number("mean"),
                            t.Number("threshold"),
                            (int)Math.Clamp(t.Maybe("trials") is { } n && double.IsFinite(n) ? n : 0, 0, 10000),
                            t.Number("sd"),
                            t.Number("shared"),
                            t.Number("wished")
                        )
                    ),
                    [(t.Number("trials"), t.Number("mean"))],
                    "trials",
                    "mean",
                    "The mean so far."
                )
        ),
        new(
            "demand",
            "How hard an exercise is",
            ExerciseDemands.Basis,
            [
                new("peak", "Peak ground force (may be empty)", "body weights", "4.30"),
                new("index", "Patellar index (may be empty)", "", "0.563"),
                new("jump", "Landing from a vertical jump", "body weights", "3.34"),
            ],
            t =>
                Plain(
                    ExerciseDemands.Of(new DemandInput(t.Maybe("peak"), t.Maybe("index"), t.Number("jump"))),
                    [(1, t.Number("jump")), (2, t.Maybe("peak") ?? 0)],
                    "1: jump's landing; 2: this one",
                    "peak, body weights",
                    "The landing of a vertical jump beside this exercise."
                )
        ),
        new(
            "response",
            "Why the good day comes later",
            TrainingResponses.Basis,
            [
                new("loads", "Loads, day:units", "", "0:100"),
                new("day", "Day asked about", "d", "14"),
                new("slow", "What lasts fades in", "d", "42"),
                new("fast", "What tires fades in", "d", "7"),
                new("gain", "Weight of what lasts", "", "1"),
                new("tiring", "Weight of what tires", "", "2"),
            ],
            Response
        ),
    ];

    private static Outcome<KitAnswer> DropHeight(KitTyped t)
    {
        ImmutableArray<(double A, double B)> jumps = t.Pairs("jumps");
        ImmutableArray<(double A, double B)> contacts = t.Pairs("contacts");
        return jumps.Length != contacts.Length
            ? new Refusal(
                $"{jumps.Length} jumps and {contacts.Length} contacts are written: give each jump its contact, in the same order."
            )
            : Plain(
                DropCurves.Of(
                    new DropCurveInput(
                        [.. jumps.Zip(contacts, (j, c) => new DropJumpTrial(j.A, j.B, c.B))],
                        t.Number("limit"),
                        t.Number("ceiling")
                    )
                ),
                jumps,
                "drop, m",
                "index, m/s",
                "Reactive strength over drop height, each jump a dot."
            );
    }

    private static Outcome<KitAnswer> Landing(KitTyped t) =>
        Plain(
            LandingForces.Of(
                new LandingInput(
                    t.Number("athlete"),
                    [.. t.Pairs("landings").Select(p => new MeasuredLanding(p.A, p.B))],
                    t.Number("drop"),
                    t.Maybe("limit")
                )
            ),
            t.Pairs("landings"),
            "drop, m",
            "peak, N",
            "Peak force over the drop, each landing a dot."
        );

    private static Outcome<KitAnswer> Maximum(KitTyped t) =>
        Plain(
            LoadVelocities.Of(
                new LoadVelocityInput(
                    [.. t.Pairs("lifts").Select(p => new LoadedJump(p.A, p.B))],
                    t.Number("velocity"),
                    t.Number("doubt"),
                    t.Text("lift") == "full squat"
                )
            ),
            t.Pairs("lifts"),
            "load, kg",
            "velocity, m/s",
            "Mean velocity over load, each lift a dot."
        );

    private static Outcome<KitAnswer> ForceVelocity(KitTyped t) =>
        Plain(
            ForceVelocityProfiles.Of(
                new ForceVelocityInput(
                    t.Number("athlete"),
                    t.Number("distance"),
                    [.. t.Pairs("jumps").Select(p => new LoadedJump(p.A, p.B))]
                )
            ),
            t.Pairs("jumps"),
            "load, kg",
            "height, m",
            "Height of squat jumps over load, each jump a dot."
        );

    private static Outcome<KitAnswer> Response(KitTyped t)
    {
        ImmutableArray<(double A, double B)> loads = t.Pairs("loads");
        int days = (int)Math.Clamp(loads.Select(p => p.A).DefaultIfEmpty(-1).Max(), -1, 730);
        var daily = new double[days + 1];
        foreach ((double day, double load) in loads.Where(p => p.A >= 0 && p.A <= days))
        {
            daily[(int)day] += load;
        }

        return Plain(
            TrainingResponses.Of(
                new ResponseInput(
                    [.. daily],
                    (int)Math.Clamp(t.Maybe("day") is { } d && double.IsFinite(d) ? d : -1, -1, 10000),
                    t.Number("slow"),
                    t.Number("fast"),
                    t.Number("gain"),
                    t.Number("tiring")
                )
            ),
            loads,
            "day",
            "load",
            "The loads, day by day."
        );
    }

    private static Outcome<KitAnswer> Plain<T>(
        Outcome<T> outcome,
        ImmutableArray<(double X, double Y)> points,
        string across,
        string up,
        string caption
    )
        where T : Calculation =>
        outcome.Then<KitAnswer>(result => new KitAnswer(
            NotAllowing,
            [],
            result,
            CurveDrawing.Svg(points, [.. points.Select(p => p.X).DefaultIfEmpty(0)], across, up, [], caption),
            caption
        ));
}
