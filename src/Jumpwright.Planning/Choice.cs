using Google.OrTools.Sat;
using Jumpwright.Exercises;
using Jumpwright.Plans;

namespace Jumpwright.Planning;

/// <summary>One entry of one athlete's menu as the solver sees it: done or not, and how many sets beyond the fewest.</summary>
internal sealed class Choice(AthleteRequest who, SessionSlot slot, MenuItem menu, Exercise exercise, CpModel model)
{
    public AthleteRequest Who { get; } = who;
    public SessionSlot Slot { get; } = slot;
    public MenuItem Menu { get; } = menu;
    public Exercise Exercise { get; } = exercise;

    /// <summary>It is done.</summary>
    public BoolVar Done { get; } = model.NewBoolVar($"{who.Athlete.Id}/{slot.Id}/{menu.ExerciseId}");

    /// <summary>It is done with at least one, two, … sets more than the fewest.</summary>
    public BoolVar[] More { get; } =
    [
        .. Enumerable
            .Range(menu.Dose.SetsMin + 1, menu.Dose.SetsMax - menu.Dose.SetsMin)
            .Select(n => model.NewBoolVar($"{who.Athlete.Id}/{slot.Id}/{menu.ExerciseId}/{n}")),
    ];

    /// <summary>The phase of the session it belongs to.</summary>
    public int Phase { get; } = OrderOfWork.PhaseOf(exercise, menu.Dose.DropHeightM);

    /// <summary>True for what limits count as of high intensity.</summary>
    public bool HighIntensity => Menu.Dose.HighIntensity || Exercise.IsHighIntensityAt(Menu.Dose.DropHeightM);

    /// <summary>Seconds for which one set keeps a piece of kit.</summary>
    public int KitSecondsOfOneSet => Menu.SecondsOf(1) + Who.PairSeconds(Menu, 1);

    /// <summary>A quantity that grows with sets, as a sum: so much for each set, and so much once.</summary>
    public LinearExpr Amount(int eachSet, int once = 0)
    {
        LinearExprBuilder sum = LinearExpr.NewBuilder();
        AddTo(sum, eachSet, once);
        return sum;
    }

    /// <summary>Adds so much for each set, and so much once, to a sum.</summary>
    public void AddTo(LinearExprBuilder sum, long eachSet, long once = 0)
    {
        sum.AddTerm(Done, (eachSet * Menu.Dose.SetsMin) + once);
        foreach (BoolVar more in More)
        {
            sum.AddTerm(more, eachSet);
        }
    }

    /// <summary>The literal that says it is done with at least so many sets.</summary>
    public BoolVar AtLeast(int sets) => sets <= Menu.Dose.SetsMin ? Done : More[sets - Menu.Dose.SetsMin - 1];

    /// <summary>Sets in a solution; 0 when it is not done.</summary>
    public int SetsIn(CpSolver solver) =>
        solver.BooleanValue(Done) ? Menu.Dose.SetsMin + More.Count(m => solver.BooleanValue(m)) : 0;
}
