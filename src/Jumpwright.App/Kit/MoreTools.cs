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
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Kit;

/// <summary>The calculators whose answer is a number or a curve, not a set-up.</summary>
internal static class MoreTools
{
    public static ImmutableArray<KitTool> All { get; } =
    [
        new(
            "drop-height",
            DropCurves.Basis,
            [
                new(
                    "jumps",
                    "m:m/s",
                    "0.20:1.42, 0.20:1.47, 0.20:1.44, 0.30:1.60, 0.30:1.55, 0.30:1.63, 0.40:1.66, 0.40:1.58, 0.40:1.64"
                ),
                new(
                    "contacts",
                    "m:s",
                    "0.20:0.19, 0.20:0.19, 0.20:0.20, 0.30:0.20, 0.30:0.20, 0.30:0.20, 0.40:0.21, 0.40:0.22, 0.40:0.21"
                ),
                new("limit", "m", "0.50"),
                new("ceiling", "s", "0.25"),
            ],
            DropHeight
        ),
        new(
            "landing",
            LandingForces.Basis,
            [
                new("athlete", "kg", "70"),
                new("landings", "m:N", "0.20:1900, 0.20:2000, 0.30:2450, 0.30:2350, 0.40:2800"),
                new("drop", "m", "0.45"),
                new("limit", "m", ""),
            ],
            Landing
        ),
        new(
            "maximum",
            LoadVelocities.Basis,
            [
                new("lifts", "kg:m/s", "60:0.95, 80:0.78, 100:0.60, 110:0.52"),
                new("velocity", "m/s", "0.32"),
                new("doubt", "m/s", "0.06"),
                new("lift", "", "another", "another", "full squat"),
            ],
            Maximum
        ),
        new(
            "force-velocity",
            ForceVelocityProfiles.Basis,
            [
                new("athlete", "kg", "75"),
                new("distance", "m", "0.40"),
                new("jumps", "kg:m", "0:0.36, 20:0.28, 40:0.215, 60:0.165, 80:0.12"),
            ],
            ForceVelocity
        ),
        new(
            "spring",
            SpringRates.Basis,
            [new("athlete", "kg", "70"), new("contact", "s", "0.20"), new("flight", "s", "0.50")],
            t =>
                Plain(
                    SpringRates.Of(new SpringInput(t.Number("athlete"), t.Number("contact"), t.Number("flight"))),
                    [(t.Number("contact"), t.Number("flight"))],
                    new Axis("kit.axis.contact", "s"),
                    new Axis("kit.axis.flight", "s"),
                    T["kit.spring.caption"]
                )
        ),
        new(
            "bound",
            Bounds.Basis,
            [
                new("of", "", "load", "load", "run-up speed"),
                new("measured", "kg or m/s:trial", "20:1, 30:2, 40:3"),
                new("asked", "kg or m/s", "42.5"),
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
                    new Axis("kit.axis.trial"),
                    t.Text("of") == "load" ? new Axis("kit.axis.load", "kg") : new Axis("kit.axis.speed", "m/s"),
                    T["kit.bound.caption"]
                )
        ),
        new(
            "trials",
            TrialsNeeded.Basis,
            [
                new("mean", "", "36.0"),
                new("threshold", "", "35.0"),
                new("trials", "", "3"),
                new("sd", "", "1.2"),
                new("shared", "", "0.3"),
                new("wished", "", "0.9"),
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
                    new Axis("kit.axis.trials"),
                    new Axis("kit.axis.mean"),
                    T["kit.trials.caption"]
                )
        ),
        new(
            "demand",
            ExerciseDemands.Basis,
            [new("peak", "body weights", "4.30"), new("index", "", "0.563"), new("jump", "body weights", "3.34")],
            t =>
                Plain(
                    ExerciseDemands.Of(new DemandInput(t.Maybe("peak"), t.Maybe("index"), t.Number("jump"))),
                    [(1, t.Number("jump")), (2, t.Maybe("peak") ?? 0)],
                    new Axis("kit.axis.beside"),
                    new Axis("kit.axis.peak.weights"),
                    T["kit.demand.caption"]
                )
        ),
        new(
            "response",
            TrainingResponses.Basis,
            [
                new("loads", "d:units", "0:100"),
                new("day", "d", "14"),
                new("slow", "d", "42"),
                new("fast", "d", "7"),
                new("gain", "", "1"),
                new("tiring", "", "2"),
            ],
            Response
        ),
    ];

    private static Outcome<KitAnswer> DropHeight(KitTyped t)
    {
        ImmutableArray<(double A, double B)> jumps = t.Pairs("jumps");
        ImmutableArray<(double A, double B)> contacts = t.Pairs("contacts");
        return jumps.Length != contacts.Length
            ? Refusal.Of(
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
                new Axis("kit.axis.drop", "m"),
                new Axis("kit.axis.index", "m/s"),
                T["kit.drop-height.caption"]
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
            new Axis("kit.axis.drop", "m"),
            new Axis("kit.axis.peak", "N"),
            T["kit.landing.caption"]
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
            new Axis("kit.axis.load", "kg"),
            new Axis("kit.axis.velocity", "m/s"),
            T["kit.maximum.caption"]
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
            new Axis("kit.axis.load", "kg"),
            new Axis("kit.axis.height", "m"),
            T["kit.force-velocity.caption"]
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
                    (int)Math.Clamp(t.Maybe("day") is { } d && double.IsFinite(d) ? d : -1, -10000, 10000),
                    t.Number("slow"),
                    t.Number("fast"),
                    t.Number("gain"),
                    t.Number("tiring")
                )
            ),
            loads,
            new Axis("kit.axis.day"),
            new Axis("kit.axis.units"),
            T["kit.response.caption"]
        );
    }

    private static Outcome<KitAnswer> Plain<TResult>(
        Outcome<TResult> outcome,
        ImmutableArray<(double X, double Y)> points,
        Axis across,
        Axis up,
        string caption
    )
        where TResult : Calculation =>
        outcome.Then<KitAnswer>(result => new KitAnswer(
            null,
            [],
            result,
            CurveDrawing.Svg(points, across, up, [], caption),
            caption
        ));
}
