using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Progression;
using Jumpwright.Safety;

namespace Jumpwright.App.Desk;

/// <summary>One athlete's leaf in the book: what is known on the day, and what follows from it.</summary>
public sealed record AthleteLeaf(History History, Profile Profile, Ladder Ladder, ImmutableArray<Ruling> Rulings)
{
    public Athlete Athlete => History.Athlete;
}
