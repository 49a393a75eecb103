using Jumpwright.Prescribing.Change;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Reports;

/// <summary>What a report says in one go.</summary>
/// <param name="Said">The words.</param>
/// <param name="Trend">The trend that it tells, so that whoever shows it can say where its numbers come from; null where it tells none.</param>
public sealed record ReportParagraph(Sentence Said, Trend? Trend = null)
{
    /// <summary>The same where what forbids today stands above it; null where it says nothing of that.</summary>
    public Sentence? UnderRulings { get; init; }

    public static implicit operator ReportParagraph(Sentence said) => new(said);

    public override string ToString() => Said.ToString();
}
