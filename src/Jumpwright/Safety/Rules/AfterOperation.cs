using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Restrictions;
using NodaTime;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// After an operation. The permission must be in force, written on or after the day of the operation by a named person in a licensed
/// role, about that place or the whole body. The rule ends only with <c>operation-discharged</c> by such a person; where the day of
/// the operation is not known, that row must name the operated place.
/// </summary>
internal sealed class AfterOperation : SafetyRule
{
    public override string Id => "after-operation";

    public override string Says =>
        "After an operation only what a licensed person has allowed in writing is planned, until such a person writes that the "
        + "athlete is discharged.";

    public override Source Source => SafetySources.House;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        if (@case.Athlete.Operation is not { } operation)
        {
            yield break;
        }

        BodySite site = BodySite.Of(operation.Site, operation.Side);
        RestrictionReading[] words =
        [
            .. @case.Rows.Where(row =>
                row.Understood
                && row.Licensed
                && row.Row.From <= @case.Day
                && (operation.Date is not { } date || row.Row.From >= date)
                && row.Site.Covers(site)
            ),
        ];
        if (words.Any(row => row.DischargesOperation && (operation.Date is not null || row.Site.Name.Length > 0)))
        {
            yield break;
        }

        Sentence name = operation.Date is { } on
            ? Sentence.Of($"operation on the {site.Said} of {on}")
            : Sentence.Of($"operation on the {site.Said} on a day nobody wrote down");
        Sentence ends = $"This rule ends only once a licensed person has written that they are discharged.";
        RestrictionReading[] permissions =
        [
            .. words.Where(row => row.InForceOn(@case.Day) && (row.AllowsAll || row.AllowedExercises.Count > 0)),
        ];
        if (permissions.Length == 0)
        {
            Sentence whom = $"the surgeon or physiotherapist who treats the {site.Said}";
            yield return Close(
                new NothingPlanned(whom),
                $"After the {name} no written restriction in force says what is allowed: ask {whom}. {ends}"
            );
        }
        else if (!permissions.Any(row => row.AllowsAll))
        {
            Sentence holds = permissions.Min(row => row.Row.Until) is { } last
                ? Sentence.Of($"That word holds until {last}; after it nothing is planned without a new one. {ends}")
                : ends;
            ImmutableHashSet<string> allowed = [.. permissions.SelectMany(row => row.AllowedExercises)];
            yield return Close(
                new OnlyExercises(allowed),
                $"After the {name} only what is allowed in writing is planned: {Listed.Of(allowed)} ({Sentence.Join("; ", permissions.Select(row => Sentence.Of($"{row.Whom}, {row.Row.From}")).Distinct())}). {holds}"
            );
        }
    }
}
