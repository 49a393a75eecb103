using System.Collections.Immutable;
using Google.OrTools.Sat;
using Jumpwright.Exercises;
using Jumpwright.Planning.Rows;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>
/// The request as a solver's model: a literal for each entry of each menu, rows for each limit, and the objective.
/// Athletes, sessions and exercises are put in order of their ids first, so that the order of the request tells nothing.
/// </summary>
internal sealed class SquadModel
{
    private readonly ILookup<string, Choice> _byAthlete;
    private readonly ILookup<(string Who, string Slot), Choice> _bySession;
    private readonly Dictionary<(string Who, string Slot, string Exercise), Choice> _byName = [];

    private SquadModel(PlanRequest request, Asked asked, Scope scope)
    {
        Request = request;
        Asked = asked;
        Scope = scope;
        Slots = [.. request.Slots.OrderBy(s => s.StartUtc).ThenBy(s => s.Id, StringComparer.Ordinal)];
        Athletes = [.. (scope.Only ?? request.Athletes).OrderBy(a => a.Athlete.Id, StringComparer.Ordinal)];
        var bySlot = Slots.Select((s, i) => (Slot: s, Index: i)).ToDictionary(s => s.Slot.Id, StringComparer.Ordinal);
        Choices =
        [
            .. from who in Athletes
            from menu in who.Menu
            let slot = bySlot.GetValueOrDefault(menu.SessionId)
            let exercise = request.Catalogue.Find(menu.ExerciseId)
            where slot.Slot is not null && exercise is not null
            orderby slot.Index, menu.ExerciseId
            select new Choice(who, slot.Slot, menu, exercise, Model),
        ];
        // By id: to compare requests of athletes by all they hold would take longer than the model.
        _byAthlete = Choices.ToLookup(c => c.Who.Athlete.Id, StringComparer.Ordinal);
        _bySession = Choices.ToLookup(c => (c.Who.Athlete.Id, c.Slot.Id));
        foreach (Choice choice in Choices)
        {
            _byName.TryAdd((choice.Who.Athlete.Id, choice.Slot.Id, choice.Menu.ExerciseId), choice);
        }
    }

    public CpModel Model { get; } = new();
    public PlanRequest Request { get; }
    public Asked Asked { get; }
    public Scope Scope { get; }
    public ImmutableArray<SessionSlot> Slots { get; }
    public ImmutableArray<AthleteRequest> Athletes { get; }
    public ImmutableArray<Choice> Choices { get; }

    /// <summary>What an athlete may do.</summary>
    public IEnumerable<Choice> ByAthlete(AthleteRequest who) => _byAthlete[who.Athlete.Id];

    /// <summary>What an athlete may do in a session.</summary>
    public IEnumerable<Choice> In(AthleteRequest who, SessionSlot slot) => _bySession[(who.Athlete.Id, slot.Id)];

    /// <summary>The same of everybody and every session that has any.</summary>
    public IEnumerable<IEnumerable<Choice>> InEach => _bySession;

    /// <summary>The kit and session of each row that limits kit, by the row's index.</summary>
    public Dictionary<int, (string Kit, string Session)> KitRows { get; } = [];

    /// <summary>Rows that tie the weeks of one athlete together, by index: growth, and steps that open.</summary>
    public HashSet<int> Coupling { get; } = [];

    /// <summary>Builds the model of a request.</summary>
    /// <param name="request">The request.</param>
    /// <param name="asked">Which requirements to keep.</param>
    /// <param name="scope">For whom, with which kit.</param>
    public static SquadModel Of(PlanRequest request, Asked asked, Scope scope)
    {
        SquadModel squad = new(request, asked, scope);
        foreach (Choice choice in squad.Choices)
        {
            for (int i = 0; i < choice.More.Length; i++)
            {
                squad.Model.AddImplication(choice.More[i], i == 0 ? choice.Done : choice.More[i - 1]);
            }
        }

        RulingRows.Add(squad);
        FixtureRows.Add(squad);
        RecoveryRows.Add(squad);
        ContactRows.Add(squad);
        LoadRows.Add(squad);
        OpeningRows.Add(squad);
        MinuteRows.Add(squad);
        SessionShapeRows.Add(squad);
        VariantRows.Add(squad);
        PairRows.Add(squad);
        Rows.KitRows.Add(squad);
        LockRows.Add(squad);
        WishRows.Add(squad);
        CutRows.Add(squad);
        if (scope.WithObjective)
        {
            ObjectiveRows.Add(squad);
        }

        squad.Hint();
        return squad;
    }

    private void Hint()
    {
        if (Scope.Sketch is not { } sketch)
        {
            return;
        }

        foreach (Choice choice in Choices)
        {
            int sets = sketch.GetValueOrDefault((choice.Slot.Id, choice.Exercise.Id));
            Model.AddHint(choice.Done, sets > 0);
            for (int i = 0; i < choice.More.Length; i++)
            {
                Model.AddHint(choice.More[i], sets > choice.Menu.Dose.SetsMin + i);
            }
        }
    }

    /// <summary>The entry of that athlete, session and exercise, or null.</summary>
    public Choice? Find(string athleteId, string sessionId, string exerciseId) =>
        _byName.GetValueOrDefault((athleteId, sessionId, exerciseId));

    /// <summary>True when the athlete is in the model's scope.</summary>
    public bool Has(string athleteId) => Athletes.Any(a => a.Athlete.Id == athleteId);

    /// <summary>Says that an entry can't be done.</summary>
    public void Close(Choice choice) => Model.AddBoolAnd([choice.Done.Not()]);

    /// <summary>Says that what is asked can't be done at all.</summary>
    public void Impossible() => Model.AddBoolOr([]);
}
