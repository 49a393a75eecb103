using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>One athlete's leaf in the book: what is known on the day, and what follows from it, worked out when first asked for.</summary>
public sealed class AthleteLeaf
{
    private readonly Once<Worked> _worked;

    internal AthleteLeaf(Dossier dossier, Squad squad, Catalogue catalogue, LocalDate day)
    {
        Dossier = dossier;
        Squad = squad;
        _worked = new Once<Worked>(() =>
        {
            Profile profile = dossier.ProfileOn(day);
            var open = OpenWork.On(day, squad, dossier.History, profile, catalogue);
            return new Worked(open.In(profile), open);
        });
    }

    public Athlete Athlete => Dossier.Athlete;

    public History History => Dossier.History;

    public Profile Profile => _worked.Value.Profile;

    /// <summary>What is open to them on the day, and what closes the rest.</summary>
    public OpenWork Open => _worked.Value.Open;

    public Ladder Ladder => Open.Ladder;

    public ImmutableArray<Ruling> Rulings => Open.Rulings;

    /// <summary>Whether it is worked out, so that asking costs nothing.</summary>
    public bool IsWorkedOut => _worked.IsMade;

    internal Dossier Dossier { get; }

    /// <summary>Whose kit, floors and air it was worked out with.</summary>
    internal Squad Squad { get; }

    /// <summary>Works it out now.</summary>
    internal void WorkOut() => _ = _worked.Value;

    private sealed record Worked(Profile Profile, OpenWork Open);
}
