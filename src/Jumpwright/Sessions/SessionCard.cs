using System.Collections.Immutable;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Sessions;

/// <summary>What one athlete should do on one day, and why. Valid for that day only.</summary>
/// <param name="AthleteId">Whose.</param>
/// <param name="AthleteName">Name as printed.</param>
/// <param name="Date">The only day it is valid for.</param>
/// <param name="SessionId">Which session.</param>
/// <param name="Start">Local start.</param>
/// <param name="Headline">What this session is for, in one sentence.</param>
/// <param name="NothingPlanned">Why nothing is planned and whom to ask; null on an ordinary card.</param>
/// <param name="Questions">The three questions on top.</param>
/// <param name="Items">In the order they are done.</param>
/// <param name="TotalContacts">Of all items.</param>
/// <param name="LandingLines">The fixed landing lines.</param>
/// <param name="StopAtOnce">Signs at which everything stops, whatever the questions said.</param>
/// <param name="Caution">The caution line.</param>
/// <param name="MadeBy">Version and plan it was made from, so that it can be made again.</param>
public sealed record SessionCard(
    string AthleteId,
    string AthleteName,
    LocalDate Date,
    string SessionId,
    LocalTime Start,
    Sentence Headline,
    Sentence? NothingPlanned,
    ImmutableArray<CardQuestion> Questions,
    ImmutableArray<CardItem> Items,
    int TotalContacts,
    ImmutableArray<Sentence> LandingLines,
    Sentence StopAtOnce,
    Sentence Caution,
    Sentence MadeBy
)
{
    /// <summary>Who alone may change it where nothing is planned, as the roll on the floor says it; null on an ordinary card.</summary>
    public Sentence? NothingInShort { get; init; }

    /// <summary>Why nothing is planned in a few words for the coach, who has the page that says more; null on an ordinary card.</summary>
    public Sentence? WhyNothing { get; init; }

    /// <summary>True where a rule of safety plans nothing, and not the week's own order.</summary>
    public bool IsShut { get; init; }

    /// <summary>True where something that was written after the plan closed it: paper printed before is not worked from any more.</summary>
    public bool IsClosedSince { get; init; }

    /// <summary>Pain of 10 above which everything stops for the day.</summary>
    public double PainStopsAbove { get; init; } = CardQuestions.StopAbove.Value;
}
