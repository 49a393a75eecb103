using Jumpwright.Athletes;
using Jumpwright.Exercises;
using NodaTime;

namespace Jumpwright.Progression;

/// <summary>The room's door: profile and history in, each exercise owned, open or closed with its reasons out.</summary>
public static class Ladders
{
    /// <summary>The ladder on that day. Safety's rulings close rungs here too, with their own sentence.</summary>
    public static Ladder For(Profile profile, History history, Catalogue catalogue, LocalDate asOf) =>
        throw new NotImplementedException();
}
