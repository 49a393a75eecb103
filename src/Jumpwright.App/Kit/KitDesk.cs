using System.Collections.Immutable;
using Jumpwright.Calculators;
using Jumpwright.Calculators.Bands;
using Jumpwright.Calculators.Boxes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Drops;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Quantities;

namespace Jumpwright.App.Kit;

/// <summary>The calculators as pages: fields in, verdict first, then the numbers and a drawing to scale.</summary>
public static class KitDesk
{
    private const string NotAllowing =
        "A calculator allows nothing: the athlete's ladder, limits and restrictions decide.";

    /// <summary>In the order in which a session meets them.</summary>
    public static ImmutableArray<KitTool> Tools { get; } =
    [
        new(
            "bands",
            "Bands and anchors",
            BandJumps.Basis,
            [
                new("rest", "Band at rest", "m", "0.60"),
                new("readings", "Scale readings, length:newtons", "", "0.8:45, 1.0:85, 1.2:120, 1.6:180, 2.0:240"),
                new("anchor", "The anchor is", "", "flat-sided", "not known", "flat-sided", "two crossed", "round"),
                new("mass", "Each anchor's mass", "kg", "50"),
                new("distance", "Anchor beside the foot", "m", "0.30"),
                new("standing", "Band meets the athlete at", "m", "1.00"),
                new("dip", "Dip", "m", "0.30"),
                new("height", "Jump height without bands", "m", "0.35"),
                new("sd", "its SD from jump to jump", "m", "0.02"),
                new("athlete", "Athlete's mass", "kg", "70"),
                new("wear", "Bands looked over today", "", "no", "no", "yes"),
            ],
            Bands
        ),
        new(
            "box",
            "Box to land on",
            BoxLandings.Basis,
            [
                new("stature", "Stature", "m", "1.78"),
                new("athlete", "Athlete's mass", "kg", "70"),
                new("height", "Jump height from the floor", "m", "0.35"),
                new("sd", "its ±", "m", "0.02"),
                new("box", "Box asked about", "m", "0.45"),
            ],
            Box
        ),
        new(
            "seat",
            "Seat, or foot on a box",
            HighStarts.Basis,
            [
                new("start", "Start", "", "seat", "seat", "foot on a box"),
                new("stature", "Stature", "m", "1.78"),
                new("athlete", "Athlete's mass", "kg", "70"),
                new("height", "Seat or box", "m", "0.45"),
            ],
            Seat
        ),
        new(
            "drop",
            "Drops",
            DropDemands.Basis,
            [
                new("box", "Box stepped from", "m", "0.30"),
                new("start", "They leave it by", "", "step", "step", "jump", "not known"),
                new("athlete", "Athlete's mass", "kg", "70"),
                new("height", "Own jump height (may be empty)", "m", "0.35"),
            ],
            Drop
        ),
        new(
            "load",
            "Bar loads",
            LoadCurves.Basis,
            [
                new("athlete", "Athlete's mass", "kg", "70"),
                new(
                    "jumps",
                    "Jumps, load kg:height m",
                    "",
                    "0:0.36, 0:0.35, 20:0.28, 20:0.27, 40:0.20, 40:0.21, 60:0.14"
                ),
                new("from", "Wished height, from", "m", "0.20"),
                new("to", "to", "m", "0.30"),
                new("limit", "Heaviest that limits allow (may be empty)", "kg", ""),
            ],
            Load
        ),
        new(
            "run-up",
            "Run-ups",
            RunUpCurves.Basis,
            [
                new(
                    "two",
                    "Off two feet, m/s:height m",
                    "",
                    "2.0:0.40, 2.5:0.44, 3.0:0.47, 3.5:0.49, 4.0:0.48, 4.5:0.46"
                ),
                new("one", "Off one foot, m/s:height m", "", ""),
                new("standing", "Standing jump", "m", "0.38"),
                new("sd", "its ±", "m", "0.01"),
                new("limit", "Fastest that limits allow (may be empty)", "m/s", ""),
            ],
            RunUp
        ),
        .. MoreTools.All,
    ];

    private static Outcome<KitAnswer> Bands(KitTyped t)
    {
        AnchorKind anchor = t.Text("anchor") switch
        {
            "flat-sided" => AnchorKind.FlatSided,
            "two crossed" => AnchorKind.TwoCrossed,
            "round" => AnchorKind.Round,
            _ => AnchorKind.Unknown,
        };
        var side = new BandSide(
            t.Number("rest"),
            [.. t.Pairs("readings").Select(p => new BandReading(p.A, p.B))],
            null,
            anchor,
            t.Maybe("mass") is { } mass && double.IsFinite(mass) ? mass : null,
            t.Number("distance"),
            WearChecked: t.Text("wear") == "yes"
        );
        double standing = t.Number("standing");
        double height = t.Number("height");
        double distance = t.Number("distance");
        return BandJumps
            .Of(new BandJumpInput(side, side, standing, t.Number("dip"), height, t.Number("sd"), t.Number("athlete")))
            .Then<KitAnswer>(jump =>
            {
                double apex = standing + BandMargins.TakeOffRise.Value + height + (2 * t.Number("sd"));
                string caption =
                    $"Bands from anchors {100 * distance:0} cm beside the feet to {100 * standing:0} cm standing, and to {100 * apex:0} cm at the highest apex to be expected.";
                var drawing = new ScaleDrawing(distance + 0.3, distance + 0.3, apex + 0.1);
                foreach (int s in (int[])[-1, 1])
                {
                    drawing
                        .Line(s * distance, 0.05, s * 0.12, standing)
                        .Line(s * distance, 0.05, s * 0.12, apex, "1.5", "6 4")
                        .Box((s * distance) - 0.12, 0.24, 0.1, "");
                }

                drawing
                    .Line(0, 0, 0, apex, "1", "2 4")
                    .Mark(0, standing - t.Number("dip"), "bottom", distance + 0.2)
                    .Mark(0, standing, "standing", distance + 0.2)
                    .Mark(0, apex, "apex", distance + 0.2);
                return new KitAnswer(
                    jump.Holds
                        ? "The set-up holds: every condition is met."
                        : "Not safe as it stands: "
                            + string.Join(
                                "; ",
                                jump.Checks.Where(c => c.State != CheckState.Met)
                                    .Select(c => c.Sentence.TrimEnd('.'))
                                    .Distinct()
                            )
                            + ".",
                    jump.Checks,
                    jump,
                    drawing.Svg(caption),
                    caption
                );
            });
    }

    private static Outcome<KitAnswer> Box(KitTyped t)
    {
        double box = t.Number("box");
        double height = t.Number("height");
        return BoxLandings
            .Of(new BoxLandingInput(t.Number("stature"), t.Number("athlete"), height, t.Number("sd"), box))
            .Then<KitAnswer>(landing =>
            {
                string caption =
                    $"A box of {100 * box:0} cm beside the highest that can be landed on no deeper than a half squat, {100 * landing.CeilingM:0} cm, and a jump of {100 * height:0} cm.";
                string picture = new ScaleDrawing(0.9, 0.9, Math.Max(Math.Max(box, landing.CeilingM), height) + 0.2)
                    .Box(0.1, 0.6, box, $"{100 * box:0} cm")
                    .Level(landing.CeilingM, -0.2, 0.8, "highest, half squat")
                    .Line(-0.5, 0, -0.5, height)
                    .Mark(-0.5, height, "own jump")
                    .Svg(caption);
                string verdict =
                    box > landing.CeilingM
                        ? $"Not met: this box would be landed on deeper than a half squat; the highest is {100 * landing.CeilingM:0} cm."
                    : landing.ProposedM is { } proposed && box > proposed
                        ? $"Within reach with no room left: {100 * proposed:0} cm is proposed."
                    : "Met: the landing is no deeper than a half squat.";
                if (landing.PaddedEdge)
                {
                    verdict += " Its edge must be padded or fold.";
                }

                return new KitAnswer($"{verdict} {NotAllowing}", [], landing, picture, caption);
            });
    }

    private static Outcome<KitAnswer> Seat(KitTyped t)
    {
        HighStart start = t.Text("start") == "seat" ? HighStart.Seat : HighStart.FootOnBox;
        double seat = t.Number("height");
        return HighStarts
            .Of(new HighStartInput(start, t.Number("stature"), t.Number("athlete"), seat))
            .Then<KitAnswer>(posture =>
            {
                double wished = posture.Value("start_height_for_90_m").Value;
                string caption =
                    $"A {(start == HighStart.Seat ? "seat" : "box")} of {100 * seat:0} cm; hips come to 90° at {100 * wished:0} cm.";
                string picture = new ScaleDrawing(0.6, 0.9, Math.Max(seat, wished) + 0.3)
                    .Box(0, 0.5, seat, $"{100 * seat:0} cm")
                    .Level(wished, -0.2, 0.7, "hips at 90°")
                    .Svg(caption);
                return new KitAnswer(
                    (
                        posture.HipsNear90 == true
                            ? "Met: the hips start near 90°. "
                            : $"Not met: the hips start away from 90°; {100 * wished:0} cm would bring them there. "
                    ) + NotAllowing,
                    [],
                    posture,
                    picture,
                    caption
                );
            });
    }

    private static Outcome<KitAnswer> Drop(KitTyped t)
    {
        double box = t.Number("box");
        DropStart start = t.Text("start") switch
        {
            "step" => DropStart.Step,
            "jump" => DropStart.Jump,
            _ => DropStart.Unknown,
        };
        return DropDemands
            .Of(new DropInput(box, t.Number("athlete"), start, [], t.Maybe("height")))
            .Then<KitAnswer>(demand =>
            {
                double falls = demand.Value("expected_drop_height_m").Value;
                string caption = $"A box of {100 * box:0} cm, of which about {100 * falls:0} cm are fallen.";
                string picture = new ScaleDrawing(0.7, 0.8, Math.Max(box, t.Maybe("height") ?? 0) + 0.2)
                    .Box(-0.5, 0.5, box, $"{100 * box:0} cm")
                    .Level(falls, 0.05, 0.6, "really fallen")
                    .Svg(caption);
                return new KitAnswer(
                    (
                        box >= 0.30
                            ? "High intensity: drops of 30 cm and more are (common practice). "
                            : "Below the 30 cm from which drops are high intensity (common practice). "
                    ) + NotAllowing,
                    [],
                    demand,
                    picture,
                    caption
                );
            });
    }

    private static Outcome<KitAnswer> Load(KitTyped t) =>
        LoadCurves
            .Of(
                new LoadCurveInput(
                    LoadMeasure.Height,
                    t.Number("athlete"),
                    [.. t.Pairs("jumps").Select(p => new LoadedJump(p.A, p.B))],
                    t.Maybe("from"),
                    t.Maybe("to"),
                    t.Maybe("limit")
                )
            )
            .Then<KitAnswer>(curve =>
            {
                string caption = $"Jump height over load: {curve.FromKg:0} to {curve.ToKg:0} kg answer the wish.";
                var points = t.Pairs("jumps");
                string picture = CurveDrawing.Svg(
                    points,
                    [.. points.Select(p => p.A).DefaultIfEmpty(0)],
                    "load, kg",
                    "height, m",
                    [(curve.FromKg, "from"), (curve.ToKg, "to")],
                    caption
                );
                return new KitAnswer(NotAllowing, [], curve, picture, caption);
            });

    private static Outcome<KitAnswer> RunUp(KitTyped t)
    {
        ImmutableArray<(double A, double B)> two = t.Pairs("two");
        ImmutableArray<(double A, double B)> one = t.Pairs("one");
        return RunUpCurves
            .Of(
                new RunUpInput(
                    [
                        .. two.Select(p => new ApproachTrial(TakeOffFoot.TwoFeet, p.A, p.B)),
                        .. one.Select(p => new ApproachTrial(TakeOffFoot.OneFoot, p.A, p.B)),
                    ],
                    t.Number("standing"),
                    t.Number("sd"),
                    t.Maybe("limit")
                )
            )
            .Then<KitAnswer>(runUp =>
            {
                const string caption = "Jump height over the speed of the run-up, each approach jump a dot.";
                ImmutableArray<(double A, double B)> all = [.. two, .. one];
                string picture = CurveDrawing.Svg(
                    all,
                    [.. all.Select(p => p.A).DefaultIfEmpty(0)],
                    "run-up, m/s",
                    "height, m",
                    [],
                    caption
                );
                return new KitAnswer(NotAllowing, [], runUp, picture, caption);
            });
    }
}
