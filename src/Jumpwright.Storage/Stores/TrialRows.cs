using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Stores.Rows;
using Jumpwright.Trials;

namespace Jumpwright.Storage.Stores;

/// <summary>A measurement as rows, and back.</summary>
internal static class TrialRows
{
    public static MeasurementRow ToRow(
        string id,
        string sha256,
        string version,
        string manifest,
        MeasuredRecording measured
    )
    {
        RecordingLabels labels = measured.Labels;
        var row = new MeasurementRow
        {
            Id = id,
            Sha256 = sha256,
            Version = version,
            Manifest = manifest,
            AthleteId = labels.Athlete,
            Date = labels.Date,
            Task = labels.Task,
            BodyMassKg = labels.BodyMassKg,
            ExternalLoadKg = labels.ExternalLoadKg,
            DropHeightM = labels.DropHeightM,
            Limb = labels.Limb,
            Note = labels.Note,
            Device = measured.Device,
            Refusal = measured.Trials.TryGet(out ImmutableArray<Trial> trials, out Refusal? refusal)
                ? null
                : refusal.Sentence,
            RefusedFor = refusal?.Kind(),
        };
        if (refusal is null)
        {
            row.Trials.AddRange(trials.Select(t => ToRow(id, t)));
        }

        return row;
    }

    public static MeasuredTrial ToTrial(string file, MeasurementRow measurement, TrialRow row) =>
        new(
            measurement.AthleteId!,
            measurement.Date!.Value,
            ToTrial(row),
            Labels(measurement),
            measurement.Device!.Value,
            file,
            measurement.Sha256
        );

    /// <summary>The labels in force; those that no column of the store keeps stand in what the manifest said.</summary>
    public static RecordingLabels Labels(MeasurementRow row)
    {
        RecordingLabels? written = MeasurementIds.HasMarks(row.Manifest) ? MeasurementIds.Labels(row.Manifest) : null;
        return new(
            row.AthleteId,
            row.Date,
            row.Task,
            row.BodyMassKg,
            row.ExternalLoadKg,
            row.DropHeightM,
            row.Limb,
            row.Note,
            written?.Plates,
            written?.FramesPerSecond
        );
    }

    private static TrialRow ToRow(string id, Trial trial)
    {
        TrialEvents events = trial.Events;
        var row = new TrialRow
        {
            MeasurementId = id,
            Number = trial.Number,
            Task = trial.Task,
            OnsetS = events.OnsetS,
            PeakDownwardVelocityS = events.PeakDownwardVelocityS,
            BottomS = events.BottomS,
            TakeOffS = events.TakeOffS,
            TouchDownS = events.TouchDownS,
            FirstTouchDownS = events.FirstTouchDownS,
            StableS = events.StableS,
        };
        row.Measures.AddRange(
            trial.Measures.Select(
                (m, i) =>
                    new MeasureRow
                    {
                        MeasurementId = id,
                        TrialNumber = trial.Number,
                        Position = i + 1,
                        Name = m.Name,
                        Value = m.Value,
                        Unit = m.Unit.Symbol,
                        StandardUncertainty = m.StandardUncertainty,
                        Method = m.Method,
                    }
            )
        );
        row.Contacts.AddRange(
            trial.Contacts.Select(
                (c, i) =>
                    new ContactRow
                    {
                        MeasurementId = id,
                        TrialNumber = trial.Number,
                        Position = i + 1,
                        ContactS = c.ContactS,
                        FlightS = c.FlightS,
                        ReactiveStrengthIndex = c.ReactiveStrengthIndex,
                    }
            )
        );
        row.Remarks.AddRange(Remarks(id, trial.Number, RemarkKind.Warning, trial.Warnings));
        row.Remarks.AddRange(Remarks(id, trial.Number, RemarkKind.Doubtful, trial.Doubtful));
        return row;
    }

    private static IEnumerable<RemarkRow> Remarks(
        string id,
        int trial,
        RemarkKind kind,
        ImmutableArray<string> texts
    ) =>
        texts.Select(
            (text, i) =>
                new RemarkRow
                {
                    MeasurementId = id,
                    TrialNumber = trial,
                    Kind = kind,
                    Position = i + 1,
                    Text = text,
                }
        );

    public static Trial ToTrial(TrialRow row) =>
        new(
            row.Number,
            row.Task,
            new TrialEvents(
                row.OnsetS,
                row.PeakDownwardVelocityS,
                row.BottomS,
                row.TakeOffS,
                row.TouchDownS,
                row.FirstTouchDownS,
                row.StableS
            ),
            [
                .. row
                    .Measures.OrderBy(m => m.Position)
                    .Select(m => new Measure(m.Name, m.Value, new Unit(m.Unit), m.StandardUncertainty, m.Method)),
            ],
            [
                .. row
                    .Contacts.OrderBy(c => c.Position)
                    .Select(c => new HopContact(c.ContactS, c.FlightS, c.ReactiveStrengthIndex)),
            ],
            Texts(row, RemarkKind.Warning),
            Texts(row, RemarkKind.Doubtful)
        );

    private static ImmutableArray<string> Texts(TrialRow row, RemarkKind kind) =>
        [.. row.Remarks.Where(r => r.Kind == kind).OrderBy(r => r.Position).Select(r => r.Text)];
}
