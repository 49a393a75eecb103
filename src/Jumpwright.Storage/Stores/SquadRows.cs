using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Storage.Folders;
using Jumpwright.Storage.Stores.Rows;
using Microsoft.EntityFrameworkCore;

namespace Jumpwright.Storage.Stores;

/// <summary>The squad's tables as rows, and back. The whole of a table is replaced by what the folder says now.</summary>
internal static class SquadRows
{
    public static void Replace(StoreContext context, SquadFolder folder)
    {
        Clear(context);
        Squad squad = folder.Squad;
        context.Squads.Add(
            new SquadRow
            {
                Id = 1,
                Name = squad.Name,
                TimeZone = squad.TimeZone,
            }
        );
        context.Kit.AddRange(
            squad.Kit.Select(
                (k, i) =>
                    new KitRow
                    {
                        Id = k.Id,
                        Position = i + 1,
                        Count = k.Count,
                    }
            )
        );
        context.Windows.AddRange(
            squad.Windows.Select(
                (w, i) =>
                    new WindowRow
                    {
                        Position = i + 1,
                        Day = w.Day,
                        Start = w.Start,
                        Minutes = w.Minutes,
                    }
            )
        );
        context.Practices.AddRange(
            squad.Practices.Select(
                (p, i) =>
                    new PracticeRow
                    {
                        Position = i + 1,
                        Day = p.Day,
                        Start = p.Start,
                        Minutes = p.Minutes,
                        Sport = p.Sport,
                    }
            )
        );
        context.Fixtures.AddRange(
            squad.Fixtures.Select(
                (f, i) =>
                    new FixtureRow
                    {
                        Position = i + 1,
                        Date = f.Date,
                        Start = f.Start,
                        Name = f.Name,
                    }
            )
        );
        context.Policies.AddRange(squad.Policy.Select(p => new PolicyRow { Key = p.Key, Value = p.Value }));
        context.Athletes.AddRange(folder.Athletes.Select(Row));
        context.Completed.AddRange(folder.Completed.Select(Row));
        context.Screens.AddRange(folder.Screens.Select(Row));
        context.Symptoms.AddRange(folder.Symptoms.Select(Row));
        context.Restrictions.AddRange(folder.Restrictions.Select(Row));
        context.Problems.AddRange(
            folder.Problems.Select(
                (p, i) =>
                    new ProblemRow
                    {
                        Position = i + 1,
                        File = p.File,
                        Line = p.Line,
                        Weight = p.Weight,
                        Sentence = p.Sentence,
                        AthleteId = p.AthleteId,
                    }
            )
        );
    }

    public static Squad? Squad(StoreContext context)
    {
        SquadRow? squad = context.Squads.SingleOrDefault();
        return squad is null
            ? null
            : new Squad(
                squad.Name,
                squad.TimeZone,
                [.. context.Kit.OrderBy(k => k.Position).AsEnumerable().Select(k => new KitCount(k.Id, k.Count))],
                [
                    .. context
                        .Windows.OrderBy(w => w.Position)
                        .AsEnumerable()
                        .Select(w => new TrainingWindow(w.Day, w.Start, w.Minutes)),
                ],
                [
                    .. context
                        .Fixtures.OrderBy(f => f.Position)
                        .AsEnumerable()
                        .Select(f => new Fixture(f.Date, f.Start, f.Name)),
                ],
                context.Policies.ToImmutableDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal)
            )
            {
                Practices =
                [
                    .. context
                        .Practices.OrderBy(p => p.Position)
                        .AsEnumerable()
                        .Select(p => new Practice(p.Day, p.Start, p.Minutes, p.Sport)),
                ],
            };
    }

    public static ImmutableArray<FolderProblem> Problems(StoreContext context) =>
        [
            .. context
                .Problems.OrderBy(p => p.Position)
                .AsEnumerable()
                .Select(p => new FolderProblem(p.File, p.Line, p.Weight, p.Sentence, p.AthleteId)),
        ];

    public static Athlete ToAthlete(AthleteRow row) =>
        new(
            row.Id,
            row.Name,
            row.BirthDate,
            row.BodyMassKg,
            row.StatureM,
            row.Sport,
            row.Level,
            row.OperationSite is null
                ? null
                : new Operation(row.OperationDate, row.OperationSite, row.OperationSide ?? Side.Unknown),
            row.Note
        );

    public static CompletedItem ToItem(CompletedRow row) =>
        new(
            row.AthleteId,
            row.Date,
            row.SessionId,
            row.ExerciseId,
            row.Sets,
            row.Reps,
            row.Contacts,
            row.LandingFaults,
            row.PainDuring,
            row.PainNextMorning,
            row.EffortRpe,
            row.DropHeightM,
            row.Note
        );

    public static ScreenResult ToScreen(ScreenRow row) =>
        new(row.AthleteId, row.Date, row.Test, row.Side, row.Value, row.Unit, row.TrialNumber, row.Assessor, row.Note);

    public static SymptomReport ToSymptom(SymptomRow row) =>
        new(
            row.AthleteId,
            row.Date,
            row.Site,
            row.Side,
            row.Tissue,
            row.NamedBy,
            row.Kind,
            row.When,
            row.Score,
            row.Note
        );

    public static Restriction ToRestriction(RestrictionRow row) =>
        new(
            row.AthleteId,
            row.From,
            row.Until,
            row.Site,
            row.Side,
            row.Allowed,
            row.Forbidden,
            row.Limit,
            row.SetBy,
            row.Role,
            row.Note
        );

    private static void Clear(StoreContext context)
    {
        context.Squads.ExecuteDelete();
        context.Kit.ExecuteDelete();
        context.Windows.ExecuteDelete();
        context.Practices.ExecuteDelete();
        context.Fixtures.ExecuteDelete();
        context.Policies.ExecuteDelete();
        context.Athletes.ExecuteDelete();
        context.Completed.ExecuteDelete();
        context.Screens.ExecuteDelete();
        context.Symptoms.ExecuteDelete();
        context.Restrictions.ExecuteDelete();
        context.Problems.ExecuteDelete();
    }

    private static AthleteRow Row(Athlete athlete, int index) =>
        new()
        {
            Id = athlete.Id,
            Position = index + 1,
            Name = athlete.Name,
            BirthDate = athlete.BirthDate,
            BodyMassKg = athlete.BodyMassKg,
            StatureM = athlete.StatureM,
            Sport = athlete.Sport,
            Level = athlete.Level,
            OperationSite = athlete.Operation?.Site,
            OperationDate = athlete.Operation?.Date,
            OperationSide = athlete.Operation?.Side,
            Note = athlete.Note,
        };

    private static CompletedRow Row(CompletedItem item, int index) =>
        new()
        {
            Position = index + 1,
            AthleteId = item.AthleteId,
            Date = item.Date,
            SessionId = item.SessionId,
            ExerciseId = item.ExerciseId,
            Sets = item.Sets,
            Reps = item.Reps,
            Contacts = item.Contacts,
            LandingFaults = item.LandingFaults,
            PainDuring = item.PainDuring,
            PainNextMorning = item.PainNextMorning,
            EffortRpe = item.EffortRpe,
            DropHeightM = item.DropHeightM,
            Note = item.Note,
        };

    private static ScreenRow Row(ScreenResult screen, int index) =>
        new()
        {
            Position = index + 1,
            AthleteId = screen.AthleteId,
            Date = screen.Date,
            Test = screen.Test,
            Side = screen.Side,
            Value = screen.Value,
            Unit = screen.Unit,
            TrialNumber = screen.TrialNumber,
            Assessor = screen.Assessor,
            Note = screen.Note,
        };

    private static SymptomRow Row(SymptomReport report, int index) =>
        new()
        {
            Position = index + 1,
            AthleteId = report.AthleteId,
            Date = report.Date,
            Site = report.Site,
            Side = report.Side,
            Tissue = report.Tissue,
            NamedBy = report.NamedBy,
            Kind = report.Kind,
            When = report.When,
            Score = report.Score,
            Note = report.Note,
        };

    private static RestrictionRow Row(Restriction restriction, int index) =>
        new()
        {
            Position = index + 1,
            AthleteId = restriction.AthleteId,
            From = restriction.From,
            Until = restriction.Until,
            Site = restriction.Site,
            Side = restriction.Side,
            Allowed = restriction.Allowed,
            Forbidden = restriction.Forbidden,
            Limit = restriction.Limit,
            SetBy = restriction.SetBy,
            Role = restriction.Role,
            Note = restriction.Note,
        };
}
