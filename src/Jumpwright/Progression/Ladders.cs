using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>The room's door: profile and history in, each exercise owned, open or closed with its reasons out.</summary>
public static class Ladders
{
    /// <summary>
    /// The ladder on that day, with the limits that hold for the athlete then. Only what happened up to that day counts. Safety's rulings
    /// close rungs here too, with their own sentence.
    /// </summary>
    public static Ladder For(Profile profile, History history, Catalogue catalogue, LocalDate asOf) =>
        For(profile, history, catalogue, asOf, LadderOptions.From(LimitBook.For(history, asOf)));

    /// <summary>The ladder on that day, with the limits that hold for the athlete then, under rulings that were already asked for.</summary>
    public static Ladder For(
        Profile profile,
        History history,
        Catalogue catalogue,
        LocalDate asOf,
        ImmutableArray<Ruling> rulings
    ) => For(profile, history, catalogue, asOf, LadderOptions.From(LimitBook.For(history, asOf)), rulings);

    /// <summary>The ladder on that day, with other thresholds, days and probabilities.</summary>
    public static Ladder For(
        Profile profile,
        History history,
        Catalogue catalogue,
        LocalDate asOf,
        LadderOptions options
    ) =>
        For(
            profile,
            history,
            catalogue,
            asOf,
            options,
            // A restriction that names an exercise nobody knows closes everything: safety must know the catalogue.
            SafetyRules.For(history, asOf, catalogue.Exercises.Select(e => e.Id).ToHashSet(StringComparer.Ordinal))
        );

    /// <summary>The ladder on that day under rulings that were already asked for.</summary>
    public static Ladder For(
        Profile profile,
        History history,
        Catalogue catalogue,
        LocalDate asOf,
        LadderOptions options,
        ImmutableArray<Ruling> rulings
    ) => new LadderBuilder(profile, history, catalogue, asOf, options, rulings).Build();
}
