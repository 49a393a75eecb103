using System.Collections.Immutable;
using System.Globalization;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using NodaTime;
using NodaTime.Text;
using static Jumpwright.App.Wording.TextBook;

namespace Jumpwright.App.Intake;

/// <summary>
/// A form of tests as somebody typed it, turned into rows of screens.csv. Every value is held against the bounds that the table's reader has,
/// so that a slip of the pen is asked about while somebody is there to answer.
/// </summary>
internal sealed class TypedTests
{
    private const int LongestNote = 200;
    private readonly IFormCollection _form;
    private readonly History _known;
    private readonly List<IReadOnlyDictionary<string, string>> _rows = [];
    private LocalDate _day;

    private TypedTests(IFormCollection form, History known) => (_form, _known) = (form, known);

    /// <summary>What stands in the way: a field, and the words.</summary>
    public sealed record Fault(string Field, string Words);

    /// <summary>The rows, or the first field that can't stand so and why.</summary>
    /// <param name="form">What was sent.</param>
    /// <param name="known">What is known of the athlete.</param>
    /// <param name="today">The day that the decisions are for; no test is of a later one.</param>
    public static (IReadOnlyList<IReadOnlyDictionary<string, string>> Rows, Fault? Fault) Of(
        IFormCollection form,
        History known,
        LocalDate today
    )
    {
        var read = new TypedTests(form, known);
        Fault? fault =
            !LocalDatePattern.Iso.Parse(form["date"].ToString()).TryGetValue(default, out read._day)
            || read._day > today
            || read._day.Year < 1900
                ? new Fault("date", T["tests.date.wrong"])
                : read.Singles() ?? read.Lifts() ?? read.RunUp() ?? read.Reach();
        return (
            read._rows,
            fault ?? (read._rows.Count == 0 ? new Fault(TestFields.Single[0].Tests[0], T["tests.nothing"]) : null)
        );
    }

    private Fault? Singles()
    {
        foreach (FieldTest test in TestFields.Single.SelectMany(g => g.Tests).Select(id => FieldTest.Find(id)!))
        {
            foreach (Side side in test.Sided ? new[] { Side.Left, Side.Right } : [Side.Unknown])
            {
                string field = TestFields.Name(test.Id, side);
                if (Cell(field).Length == 0)
                {
                    continue;
                }

                string unit = test.Unit;
                if (test.Id == FieldTest.FlightFrames)
                {
                    if (CountedFrames.Rate(Cell(TestFields.FlightRate)) is not { } rate)
                    {
                        return new Fault(TestFields.FlightRate, T["import.rate.wrong"]);
                    }

                    unit = "frames@" + rate.ToString("0.###", CultureInfo.InvariantCulture);
                }

                (string? value, Fault? fault) = test.Id == FieldTest.Effusion ? Grade(field) : Value(test, field, side);
                if (fault is not null)
                {
                    return fault;
                }

                if (
                    test.Id == FieldTest.FlightFrames
                    && FieldTest.FramesFault(
                        double.Parse(value!, CultureInfo.InvariantCulture),
                        FieldTest.FramesPerSecond(unit)!.Value
                    )
                        is not null
                )
                {
                    return new Fault(field, T["tests.frames.wrong"]);
                }

                Add(test.Id, side, value!, unit, Next(side, test.Id));
            }
        }

        return null;
    }

    private Fault? Lifts()
    {
        foreach (ImmutableArray<string> lift in TestFields.Lifts)
        {
            int trial = Next(Side.Unknown, [.. lift]);
            for (int set = 1; set <= TestFields.Sets; set++)
            {
                string Field(string test) => TestFields.Name(test, set);
                if (lift.All(t => Cell(Field(t)).Length == 0))
                {
                    continue;
                }

                // A load without its repetitions says nothing of strength, and the other way round.
                if (lift.Take(2).FirstOrDefault(t => Cell(Field(t)).Length == 0) is { } missing)
                {
                    return new Fault(Field(missing), T["tests.lift.both"]);
                }

                foreach (string test in lift.Where(t => Cell(Field(t)).Length > 0))
                {
                    (string? value, Fault? fault) = Value(FieldTest.Find(test)!, Field(test), Side.Unknown);
                    if (fault is not null)
                    {
                        return fault;
                    }

                    Add(test, Side.Unknown, value!, FieldTest.Find(test)!.Unit, trial);
                }

                trial++;
            }
        }

        return null;
    }

    private Fault? RunUp()
    {
        string[] typed = [.. TestFields.RunUp.Where(t => Cell(t).Length > 0)];
        if (typed.Length == 0)
        {
            return null;
        }

        Side? side = Cell(TestFields.RunUpSide) switch
        {
            "both" => Side.Both,
            "left" => Side.Left,
            "right" => Side.Right,
            _ => null,
        };
        if (side is not { } feet)
        {
            return new Fault(TestFields.RunUpSide, T["tests.run-up.side.wrong"]);
        }

        if (!typed.Contains(TestFields.RunUp[0], StringComparer.Ordinal))
        {
            return new Fault(TestFields.RunUp[0], T["tests.run-up.speed.missing"]);
        }

        int trial = Next(feet, [.. TestFields.RunUp]);
        foreach (string test in typed)
        {
            (string? value, Fault? fault) = Value(FieldTest.Find(test)!, test, Side.Unknown);
            if (fault is not null)
            {
                return fault;
            }

            Add(test, feet, value!, FieldTest.Find(test)!.Unit, trial);
        }

        return null;
    }

    /// <summary>Whoever jumps touches higher than they reach.</summary>
    private Fault? Reach() =>
        Typed("standing-reach") is { } reach
        && (Typed("best-touch") is { } touch && touch <= reach || Typed("run-up-touch") is { } high && high <= reach)
            ? new Fault(Typed("best-touch") <= reach ? "best-touch" : "run-up-touch", T["tests.touch.below-reach"])
            : null;

    private double? Typed(string test) =>
        _rows.Find(r => r["test"] == test) is { } row ? double.Parse(row["value"], CultureInfo.InvariantCulture) : null;

    private (string? Value, Fault? Fault) Grade(string field) =>
        FieldTest.EffusionGrades.Any(g => g.Written == Cell(field))
            ? (Cell(field), null)
            : (null, new Fault(field, T["tests.effusion.wrong"]));

    /// <summary>A value in the table's own unit; or why it can't be what was measured.</summary>
    private (string? Value, Fault? Fault) Value(FieldTest test, string field, Side side)
    {
        string unit = TestFields.TypedUnit(test);
        string typed = Cell(field);
        string metric = TypedAmount.Metric(
            typed.Replace('−', '-'),
            unit,
            TypedAmount.UnitsOf(_form[TypedAmount.Field])
        );
        string name = side is Side.Left or Side.Right ? $"{Named(test)}, {Spoken.Of(side)}" : Named(test);
        const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (!decimal.TryParse(metric, Plain, CultureInfo.InvariantCulture, out decimal value))
        {
            return (null, new Fault(field, T["tests.no-number", name, typed]));
        }

        if (TestFields.IsCount(test) && value != Math.Floor(value))
        {
            return (null, new Fault(field, T["tests.not-whole", name, typed]));
        }

        decimal kept = unit == "cm" ? value / 100 : value;
        if (kept < (decimal)test.Least || kept > (decimal)test.Most)
        {
            double scale = unit == "cm" ? 100 : 1;
            string outside = T[
                "tests.outside",
                name,
                typed,
                UnitWords.Number(test.Least * scale, unit),
                UnitWords.Number(test.Most * scale, unit),
                UnitWords.Word(UnitWords.Unit(unit))
            ];
            // 1.42 in a field of centimetres was read from the tape in metres.
            bool metres =
                unit == "cm"
                && Speech.Now.Units == UnitSystem.Metric
                && value >= (decimal)test.Least
                && value <= (decimal)test.Most;
            return (
                null,
                new Fault(
                    field,
                    metres ? outside + " " + T["tests.metres", ItemWords.Number((double)value * 100)] : outside
                )
            );
        }

        return (kept.ToString("0.######", CultureInfo.InvariantCulture), null);
    }

    /// <summary>What a test is called on its page.</summary>
    public static string Named(FieldTest test)
    {
        string name = Spoken.Measure(test.Id).Replace('-', ' ');
        return char.ToUpperInvariant(name[0]) + name[1..];
    }

    /// <summary>The next trial number of those tests on that day and side.</summary>
    private int Next(Side side, params ReadOnlySpan<string> tests)
    {
        int next = 1;
        foreach (ScreenResult there in _known.Screens)
        {
            if (there.Date == _day && there.Side == side && tests.Contains(there.Test))
            {
                next = Math.Max(next, (there.TrialNumber ?? 1) + 1);
            }
        }

        return next;
    }

    private void Add(string test, Side side, string value, string unit, int trial) =>
        _rows.Add(
            new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["athlete"] = _known.Athlete.Id,
                ["date"] = LocalDatePattern.Iso.Format(_day),
                ["test"] = test,
                ["side"] = side is Side.Unknown ? "" : side.ToString().ToLowerInvariant(),
                ["value"] = value,
                ["unit"] = unit,
                ["trial"] = trial.ToString(CultureInfo.InvariantCulture),
                ["assessor"] = Cell("assessor"),
                ["note"] = Cell("note"),
            }
        );

    private string Cell(string field) =>
        _form[field].ToString().Trim() is var cell && cell.Length <= LongestNote ? cell : cell[..LongestNote];
}
