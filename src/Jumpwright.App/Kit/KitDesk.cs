using System.Collections.Immutable;
using Jumpwright.App.Wording;
using Jumpwright.Calculators;
using Jumpwright.Calculators.Bands;
using Jumpwright.Calculators.Boxes;
using Jumpwright.Calculators.Curves;
using Jumpwright.Calculators.Drops;
using Jumpwright.Calculators.RunUps;
using Jumpwright.Quantities;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Kit;

/// <summary>The calculators as pages: fields in, verdict first, then the numbers and a drawing to scale.</summary>
public static class KitDesk
{
    /// <summary>In the order in which a session meets them.</summary>
    public static ImmutableArray<KitTool> Tools { get; } =
    [
        new(
            "bands",
            BandJumps.Basis,
            [
                new("rest", "m", "0.60"),
                new("readings", "m:N", "0.8:45, 1.0:85, 1.2:120, 1.6:180, 2.0:240"),
                new("right", "m:N", "0.8:46, 1.0:84, 1.2:122, 1.6:181, 2.0:243"),
                new("anchor", "", "flat-sided", "not known", "flat-sided", "two crossed", "round"),
                new("mass", "kg", "50"),
                new("distance", "m", "0.30"),
                new("standing", "m", "1.00"),
                new("dip", "m", "0.30"),
                new("height", "m", "0.35"),
                new("sd", "m", "0.02"),
                new("athlete", "kg", "70"),
                new("wear", "", "not known", "not known", "no", "yes"),
            ],
            Bands
        ),
        new(
            "box",
            BoxLandings.Basis,
            [
                new("stature", "m", "1.78"),
                new("athlete", "kg", "70"),
                new("height", "m", "0.35"),
                new("sd", "m", "0.02"),
                new("box", "m", "0.45"),
            ],
            Box
        ),
        new(
            "seat",
            HighStarts.Basis,
            [
                new("start", "", "seat", "seat", "foot on a box"),
                new("stature", "m", "1.78"),
                new("athlete", "kg", "70"),
                new("height", "m", "0.45"),
            ],
            Seat
        ),
        new(
            "drop",
            DropDemands.Basis,
            [
                new("box", "m", "0.30"),
                new("start", "", "step", "step", "jump", "not known"),
                new("athlete", "kg", "70"),
                new("height", "m", "0.35"),
            ],
            Drop
        ),
        new(
            "load",
            LoadCurves.Basis,
            [
                new("athlete", "kg", "70"),
                new("jumps", "kg:m", "0:0.36, 0:0.35, 20:0.28, 20:0.27, 40:0.20, 40:0.21, 60:0.14"),
                new("from", "m", "0.20"),
                new("to", "m", "0.30"),
                new("limit", "kg", ""),
            ],
            Load
        ),
        new(
            "run-up",
            RunUpCurves.Basis,
            [
                new("two", "m/s:m", "2.0:0.40, 2.5:0.44, 3.0:0.47, 3.5:0.49, 4.0:0.48, 4.5:0.46"),
                new("one", "m/s:m", ""),
                new("standing", "m", "0.38"),
                new("sd", "m", "0.01"),
                new("limit", "m/s", ""),
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
        var left = new BandSide(
            t.Number("rest"),
            Readings("readings"),
            null,
            anchor,
            t.Maybe("mass") is { } mass && double.IsFinite(mass) ? mass : null,
            t.Number("distance"),
            WearChecked: t.Text("wear") switch
            {
                "yes" => true,
                "no" => false,
                _ => null,
            }
        );
        // Two bands are two bands: each is measured by itself.
        BandSide right = left with
        {
            Readings = Readings("right"),
        };
        double standing = t.Number("standing");
        double height = t.Number("height");
        double distance = t.Number("distance");
        return BandJumps
            .Of(new BandJumpInput(left, right, standing, t.Number("dip"), height, t.Number("sd"), t.Number("athlete")))
            .Then<KitAnswer>(jump =>
            {
                double apex = standing + BandMargins.TakeOffRise.Value + height + (2 * t.Number("sd"));
                string caption = T["kit.bands.caption", Height(distance), Height(standing), Height(apex)];
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
                    .Mark(0, standing - t.Number("dip"), T["kit.bands.bottom"], distance + 0.2)
                    .Mark(0, standing, T["kit.bands.upright"], distance + 0.2)
                    .Mark(0, apex, T["kit.bands.apex"], distance + 0.2);
                return new KitAnswer(
                    T[jump.Holds ? "kit.bands.holds" : "kit.bands.not-safe"],
                    jump.Checks,
                    jump,
                    drawing.Svg(caption),
                    caption
                )
                {
                    Because = jump.Holds ? null : Because(jump.Checks),
                };
            });

        ImmutableArray<BandReading> Readings(string field) =>
            [.. t.Pairs(field).Select(p => new BandReading(p.A, p.B))];
    }

    private static Outcome<KitAnswer> Box(KitTyped t)
    {
        double box = t.Number("box");
        double height = t.Number("height");
        return BoxLandings
            .Of(new BoxLandingInput(t.Number("stature"), t.Number("athlete"), height, t.Number("sd"), box))
            .Then<KitAnswer>(landing =>
            {
                string caption = T["kit.box.caption", Height(box), Height(landing.CeilingM), Height(height)];
                string picture = new ScaleDrawing(0.9, 0.9, Math.Max(Math.Max(box, landing.CeilingM), height) + 0.2)
                    .Box(0.1, 0.6, box, Height(box))
                    .Level(landing.CeilingM, 0.05, 0.8, T["kit.box.highest"])
                    .Line(-0.85, 0, -0.85, height)
                    .Mark(-0.85, height, T["kit.box.own"])
                    .Svg(caption);
                string verdict =
                    box > landing.CeilingM ? ReadersUnits.In(T["kit.box.not-met", Height(landing.CeilingM)])
                    : landing.ProposedM is { } proposed && box > proposed ? T["kit.box.no-room", Height(proposed)]
                    : T["kit.box.met"];
                if (landing.PaddedEdge)
                {
                    verdict += " " + T["kit.box.edge"];
                }

                return new KitAnswer(verdict, [], landing, picture, caption);
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
                string caption = T[$"kit.seat.caption.{start}", Height(seat), Height(wished)];
                string picture = new ScaleDrawing(0.6, 0.9, Math.Max(seat, wished) + 0.3)
                    .Box(0, 0.5, seat, Height(seat))
                    .Level(wished, -0.2, 0.7, T["kit.seat.hips"])
                    .Svg(caption);
                return new KitAnswer(
                    posture.HipsNear90 == true ? T["kit.seat.met"] : T["kit.seat.not-met", Height(wished)],
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
                string caption = T["kit.drop.caption", Height(box), Height(falls)];
                string picture = new ScaleDrawing(0.7, 0.8, Math.Max(box, t.Maybe("height") ?? 0) + 0.2)
                    .Box(-0.5, 0.5, box, Height(box))
                    .Level(falls, 0.05, 0.6, T["kit.drop.fallen"])
                    .Svg(caption);
                return new KitAnswer(
                    ReadersUnits.In(T[box >= 0.30 ? "kit.drop.high" : "kit.drop.below"]),
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
                string caption = T["kit.load.caption", Mass(curve.FromKg), Mass(curve.ToKg)];
                var points = t.Pairs("jumps");
                string picture = CurveDrawing.Svg(
                    points,
                    new Axis("kit.axis.load", "kg"),
                    new Axis("kit.axis.height", "m"),
                    [(curve.FromKg, T["kit.axis.from"]), (curve.ToKg, T["kit.axis.to"])],
                    caption
                );
                return new KitAnswer(null, [], curve, picture, caption);
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
                string caption = T["kit.run-up.caption"];
                ImmutableArray<(double A, double B)> all = [.. two, .. one];
                string picture = CurveDrawing.Svg(
                    all,
                    new Axis("kit.axis.run-up", "m/s"),
                    new Axis("kit.axis.height", "m"),
                    [],
                    caption
                );
                return new KitAnswer(null, [], runUp, picture, caption);
            });
    }

    /// <summary>What is not met or not known, in one sentence.</summary>
    private static Sentence Because(ImmutableArray<Check> checks)
    {
        Sentence all = Sentence.Join(
            "; ",
            checks
                .Where(c => c.State != CheckState.Met)
                .Select(c => c.Sentence)
                .Distinct()
                .Select(s => Sentence.Of($"{s:open}"))
        );
        return $"{all}.";
    }

    /// <summary>A height with its unit, in the units of the request.</summary>
    private static string Height(double metres) => SpokenSentences.Text($"{new Length(metres):0 cm}");

    private static string Mass(double kilograms) => SpokenSentences.Text($"{new Mass(kilograms):0 kg}");
}
