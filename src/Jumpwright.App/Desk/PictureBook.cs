using System.Collections.Immutable;
using Jumpwright.App.Wording;
using Jumpwright.Athletes;
using Jumpwright.Paper;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Trials;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>The pictures of a squad's athletes, each drawn once.</summary>
public sealed class PictureBook(SquadMaterial material)
{
    private readonly Dictionary<(string, LocalDate), CardPictures> _drawn = [];
    private readonly Lock _one = new();

    /// <summary>The athlete's last jump with its phases, and the trend of its height, as known on that day.</summary>
    public CardPictures Of(string athleteId, LocalDate day)
    {
        lock (_one)
        {
            if (!_drawn.TryGetValue((athleteId, day), out CardPictures? pictures))
            {
                History? history = material.Histories.FirstOrDefault(h => h.Athlete.Id == athleteId);
                pictures = history is null
                    ? CardPictures.None
                    : new CardPictures(LastJump(history, day), Trend(history, day));
                _drawn[(athleteId, day)] = pictures;
            }

            return pictures;
        }
    }

    /// <summary>The latest countermovement jump with a trace; without one the latest trial of any task that has a trace.</summary>
    private Picture? LastJump(History history, LocalDate day)
    {
        IEnumerable<MeasuredTrial> latest = history
            .Trials.Where(t => t.Date <= day && t.Device is Device.ForcePlate or Device.TwoForcePlates)
            .OrderByDescending(t => t.Trial.Task is JumpTask.CountermovementJump)
            .ThenByDescending(t => t.Date)
            .ThenByDescending(t => t.File, StringComparer.Ordinal)
            .ThenByDescending(t => t.Trial.Number);
        foreach (MeasuredTrial trial in latest)
        {
            if (
                material.Raw(trial.Sha256) is { } bytes
                && Recording.From(bytes, trial.Labels).TryGet(out Recording? recording, out _)
                && recording is ForceRecording force
                && Tracing.Of(force, trial.Trial).TryGet(out MotionTrace? trace, out _)
            )
            {
                return Plots.Trace(trace, $"{Capital(Words.Of(trial.Trial.Task))}, {Dates.Short(trial.Date)}");
            }
        }

        return null;
    }

    /// <summary>
    /// Countermovement-jump height over days: of the method and device with the latest trial, so that no two quantities
    /// stand on one trend. Nothing with fewer than two days.
    /// </summary>
    private static Picture? Trend(History history, LocalDate day)
    {
        var heights = history
            .Trials.Where(t => t.Date <= day && t.Trial.Task is JumpTask.CountermovementJump)
            .Select(t =>
                (
                    t.Date,
                    t.Device,
                    Height: t.Trial.FindTrusted(MeasureNames.JumpHeight)
                        ?? t.Trial.FindTrusted(MeasureNames.JumpHeightFlightTime)
                )
            )
            .Where(t => t.Height is not null)
            .GroupBy(t => (t.Device, t.Height!.Name))
            .OrderByDescending(g => g.Max(t => t.Date))
            .ThenByDescending(g => g.Count())
            .FirstOrDefault();
        if (heights is null || heights.Select(t => t.Date).Distinct().Count() < 2)
        {
            return null;
        }

        ImmutableArray<TrendPoint> points =
        [
            .. heights
                .OrderBy(t => t.Date)
                .Select(t => new TrendPoint(
                    t.Date,
                    100 * t.Height!.In(Unit.Metre),
                    100 * t.Height.StandardUncertainty
                )),
        ];
        string label = $"{Capital(MeasureWords.Name(heights.Key.Name))}, {Words.Of(heights.Key.Device)}";
        return Plots.Trend(points, label, "cm");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
