using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>One column of a table: its name as written, its role, and what turns its unit into SI.</summary>
internal readonly record struct Column(string Name, ColumnRole Role, double Factor)
{
    /// <summary>Standard gravity times one kilogram, N: exact (CGPM 3, 1901).</summary>
    private const double NewtonsPerKilogramForce = 9.80665;

    /// <summary>Standard gravity times one pound of 0.45359237 kg, N: exact by the two definitions.</summary>
    public const double NewtonsPerPoundForce = NewtonsPerKilogramForce * 0.45359237;

    private static readonly (string Name, ColumnRole Role, double Factor)[] Known =
    [
        ("time_s", ColumnRole.Time, 1),
        ("force_N", ColumnRole.Force, 1),
        ("force_left_N", ColumnRole.LeftForce, 1),
        ("force_right_N", ColumnRole.RightForce, 1),
        ("contact_s", ColumnRole.Contact, 1),
        ("flight_s", ColumnRole.Flight, 1),
        ("frame", ColumnRole.Frame, 1),
        ("event", ColumnRole.Event, 1),
        ("time_ms", ColumnRole.Time, 1e-3),
        ("force_kN", ColumnRole.Force, 1e3),
        ("force_left_kN", ColumnRole.LeftForce, 1e3),
        ("force_right_kN", ColumnRole.RightForce, 1e3),
        ("force_kgf", ColumnRole.Force, NewtonsPerKilogramForce),
        ("force_left_kgf", ColumnRole.LeftForce, NewtonsPerKilogramForce),
        ("force_right_kgf", ColumnRole.RightForce, NewtonsPerKilogramForce),
        ("force_lbf", ColumnRole.Force, NewtonsPerPoundForce),
        ("force_left_lbf", ColumnRole.LeftForce, NewtonsPerPoundForce),
        ("force_right_lbf", ColumnRole.RightForce, NewtonsPerPoundForce),
        ("contact_ms", ColumnRole.Contact, 1e-3),
        ("flight_ms", ColumnRole.Flight, 1e-3),
    ];

    /// <summary>The column that a name means. Units are part of names; another case of the letters is repaired.</summary>
    public static Column Of(string name, List<string> warnings)
    {
        foreach ((string known, ColumnRole role, double factor) in Known)
        {
            if (!string.Equals(name, known, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            if (factor is not 1)
            {
                warnings.Add(
                    Repairs.UnitConverted(name, factor < 1 ? Sentence.Of($"seconds") : Sentence.Of($"newtons"))
                );
            }
            else if (!string.Equals(name, known, StringComparison.Ordinal))
            {
                warnings.Add(Repairs.HeaderCase(name, known));
            }

            return new Column(name, role, factor);
        }

        return new Column(name, ColumnRole.Ignored, 1);
    }
}
