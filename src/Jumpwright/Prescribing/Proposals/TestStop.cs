using System.Collections.Immutable;
using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>When a test stops, as data; <see cref="After"/> holds it against the trials so far, <see cref="Words"/> says it.</summary>
/// <param name="ContactCeilingS">Stop when contact, mean of the trials so far, is longer, s; null where contact is not the aim.</param>
/// <param name="HeightLossPct">Stop when the jump or rebound has fallen by more, %; null where height is not the aim.</param>
/// <param name="ReferenceHeightM">The height that this is counted from: the best mean at an easier step, m; null: the first trial.</param>
/// <param name="LandingFaults">Stop at so many landing faults; null where nothing lands.</param>
/// <param name="PainAbove">Stop when pain is above this, of 10.</param>
public sealed record TestStop(
    double? ContactCeilingS,
    double? HeightLossPct,
    double? ReferenceHeightM,
    int? LandingFaults,
    double PainAbove
)
{
    /// <summary>
    /// Whether the test goes on. Faults and pain stop it at once. Contact and height are judged by the mean of the trials so far
    /// at this step: one trial scatters by five per cent and more, so that a single low one says little.
    /// </summary>
    public StopVerdict After(ReadOnlySpan<TrialSeen> soFar)
    {
        int faults = 0;
        double heights = 0;
        double contacts = 0;
        int timed = 0;
        int measured = 0;
        double? first = null;
        foreach (TrialSeen trial in soFar)
        {
            faults += trial.LandingFaults;
            if (trial.Pain > PainAbove)
            {
                return Stop($"pain was {trial.Pain:0.#} of 10, and above {PainAbove:0.#} it stops");
            }

            if (trial.PainSiteNew)
            {
                return Stop($"it hurt in a new place");
            }

            if (trial.ContactS is { } contact)
            {
                contacts += contact;
                timed++;
            }

            if (trial.HeightM is { } height)
            {
                first ??= height;
                heights += height;
                measured++;
            }
        }

        if (LandingFaults is { } most && faults >= most)
        {
            return faults == 1 ? Stop($"1 landing fault was seen") : Stop($"{faults} landing faults were seen");
        }

        if (ContactCeilingS is { } ceiling && timed > 0 && contacts / timed > ceiling + 1e-9)
        {
            return Stop($"contact is {1000 * contacts / timed:0} ms, over the ceiling of {1000 * ceiling:0} ms");
        }

        double? reference = ReferenceHeightM ?? (measured > 1 ? first : null);
        return
            HeightLossPct is { } loss
            && measured > 0
            && reference is { } from
            && heights / measured < from * (1 - (loss / 100)) - 1e-9
            ? Stop(
                $"the height fell from {new Length(from):0.0 (cm)} to {new Length(heights / measured):0.0 cm}, by more than {loss:0.#} %"
            )
            : StopVerdict.GoesOn;
    }

    /// <summary>The same in words.</summary>
    public ImmutableArray<Sentence> Words => [.. Aims, Pain];

    /// <summary>What stops it but for pain, in words; empty where nothing does.</summary>
    public ImmutableArray<Sentence> Aims
    {
        get
        {
            var words = ImmutableArray.CreateBuilder<Sentence>();
            if (ContactCeilingS is { } ceiling)
            {
                words.Add($"contact is longer than {1000 * ceiling:0} ms");
            }

            if (HeightLossPct is { } loss)
            {
                words.Add(
                    ReferenceHeightM is { } from
                        ? Sentence.Of($"the height falls by more than {loss:0.#} % below {new Length(from):0.0 cm}")
                        : Sentence.Of($"the height falls by more than {loss:0.#} %")
                );
            }

            if (LandingFaults is { } faults)
            {
                words.Add(
                    faults == 1
                        ? Sentence.Of($"a landing fault is seen")
                        : Sentence.Of($"{faults} landing faults are seen")
                );
            }

            return words.ToImmutable();
        }
    }

    /// <summary>What stops it as pain, in words.</summary>
    public Sentence Pain =>
        PainAbove <= 0
            ? Sentence.Of($"anything hurts")
            : Sentence.Of($"pain is above {PainAbove:0.#} of 10, or anywhere new");

    private static StopVerdict Stop(Sentence because) => new(true, because);
}
