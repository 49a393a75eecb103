namespace Jumpwright.Trials;

/// <summary>
/// When a value is too unsure to be decided from: where it may well be off by what separates one height, or one contact, from
/// the next (house rule: 3.3 standard uncertainties reach the step).
/// </summary>
internal static class Sureness
{
    /// <summary>A centimetre of height.</summary>
    public const double HeightM = 0.010;

    /// <summary>Ten milliseconds of contact.</summary>
    public const double ContactS = 0.010;

    private const double Uncertainties = 3.3;

    /// <summary>Names a height by impulse doubtful where it is not known to a centimetre.</summary>
    public static void OfHeight(MeasureList list, string name)
    {
        if (list.Find(name) is { } height && Uncertainties * height.StandardUncertainty > HeightM)
        {
            list.Doubt(Cautions.HeightUnsure(2 * height.StandardUncertainty), name);
        }
    }

    /// <summary>Names a contact time doubtful where it is not known to ten milliseconds.</summary>
    public static void OfContact(MeasureList list)
    {
        if (
            list.Find(MeasureNames.ContactTime) is { } contact
            && Uncertainties * contact.StandardUncertainty > ContactS
        )
        {
            list.Doubt(Cautions.ContactUnsure(2 * contact.StandardUncertainty), MeasureNames.ContactTime);
        }
    }
}
