using Jumpwright.Quantities;
using Jumpwright.Safety.Restrictions;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Rows of restrictions.csv. Our reading of "expired": the row knew the tissue up to its last day; after it neither what it allowed
/// nor what it did not mention is known to be safe, so nothing is planned until its setter, or another licensed person, writes again.
/// A later row on the same place by a named person in a licensed role is that word.
/// </summary>
internal sealed class WrittenRestrictions : SafetyRule
{
    public override string Id => "restriction";

    public override string Says =>
        "A clinician's written restriction is a hard limit; one that cannot be understood, or is past its last day, closes everything "
        + "until its setter has been asked.";

    public override Source Source => SafetySources.House;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        foreach (RestrictionReading row in @case.Rows)
        {
            if (row.ExpiredOn(@case.Day))
            {
                if (!@case.Rows.Any(later => Replaces(later, row, @case)))
                {
                    yield return Close(
                        new NothingPlanned(row.Whom),
                        $"The {row.Name} has expired: ask {row.Whom}. Nothing is planned until a new row by a licensed person says what is allowed."
                    );
                }

                continue;
            }

            if (!row.InForceOn(@case.Day))
            {
                continue;
            }

            if (row.Problem is { } problem)
            {
                yield return Close(
                    new NothingPlanned(row.Whom),
                    $"The {row.Name} cannot be understood ({problem}): ask {row.Whom}. Nothing is planned until it is put right."
                );
                continue;
            }

            Sentence ends = row.Row.Until is { } last
                ? Sentence.Of($"After {last} nothing is planned until a new word is written.")
                : Sentence.Of($"Only a new word from them changes it.");
            foreach (RulingEffect effect in row.Closes)
            {
                yield return Close(effect, $"The {row.Name}, set by {row.Whom}, {Words(effect)}. {ends}");
            }

            if (!row.AllowsAll && row.AllowedExercises.Count > 0)
            {
                yield return Close(
                    new OnlyExercises(row.AllowedExercises),
                    $"The {row.Name}, set by {row.Whom}, allows only: {Listed.Of(row.AllowedExercises)}. {ends}"
                );
            }
        }
    }

    private static bool Replaces(RestrictionReading later, RestrictionReading expired, SafetyCase @case) =>
        later.Understood
        && later.Licensed
        && later.SaysWhatIsAllowed
        && later.Row.From > expired.Row.From
        && later.Row.From <= @case.Day
        && later.Site.Covers(expired.Site);

    private static Sentence Words(RulingEffect effect) =>
        effect switch
        {
            NothingPlanned => $"forbids everything",
            NoJumps => $"forbids jumps",
            NoSingleLegLandings => $"forbids landing on one leg",
            NoDepthJumps => $"forbids depth jumps",
            NoHighIntensity => $"forbids high-intensity work",
            NoExternalLoad => $"forbids external load",
            NotExercises not => $"forbids: {Listed.Of(not.Ids)}",
            DropAtMost drop => $"allows drops up to {new Length(drop.HeightM):0.00 m}",
            ContactsPerSessionAtMost contacts => $"allows {contacts.Contacts} contacts a session",
            _ => $"closes work",
        };
}
