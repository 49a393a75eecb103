using System.Text.Json.Serialization;
using Jumpwright.Athletes;

namespace Jumpwright.App.Desk.Journals;

/// <summary>A new body mass or stature. It holds until the athlete's row in athletes.csv says something else than it did then.</summary>
/// <param name="MassKg">kg; null: as before.</param>
/// <param name="StatureM">m; null: as before.</param>
/// <param name="WasMassKg">What athletes.csv said when this was written, kg.</param>
/// <param name="WasStatureM">What athletes.csv said when this was written, m.</param>
internal sealed record BodyEntry(
    [property: JsonPropertyName("mass_kg")] double? MassKg,
    [property: JsonPropertyName("stature_m")] double? StatureM,
    [property: JsonPropertyName("was_mass_kg")] double? WasMassKg,
    [property: JsonPropertyName("was_stature_m")] double? WasStatureM
)
{
    /// <summary>The athlete with what was written of their body, the oldest word first.</summary>
    public static Athlete Latest(Athlete row, IEnumerable<BodyEntry> words)
    {
        Athlete now = row;
        foreach (BodyEntry word in words)
        {
            now = now with
            {
                BodyMassKg = word.WasMassKg == row.BodyMassKg ? word.MassKg ?? now.BodyMassKg : now.BodyMassKg,
                StatureM = word.WasStatureM == row.StatureM ? word.StatureM ?? now.StatureM : now.StatureM,
            };
        }

        return now;
    }
}
