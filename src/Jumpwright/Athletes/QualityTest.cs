namespace Jumpwright.Athletes;

/// <summary>The tests that a finding may ask for; what is jumped in each stands in one table (<see cref="Exercises.TestForms"/>).</summary>
public enum QualityTest
{
    /// <summary>The landing screen from a low box.</summary>
    LandingScreen,

    /// <summary>A session of landings of any kind that is open.</summary>
    LandingSession,

    /// <summary>A single hop for distance, each leg.</summary>
    SingleHop,

    /// <summary>Countermovement jumps with each foot on a plate of its own.</summary>
    TwoPlateJumps,

    /// <summary>Repeated hops on both feet.</summary>
    Hops,

    /// <summary>Squat jumps and countermovement jumps: one means nothing without the other.</summary>
    SquatAndCountermovementJumps,

    /// <summary>Drop jumps on both feet.</summary>
    DropJumps,

    /// <summary>Jumps from a run-up and countermovement jumps.</summary>
    ApproachAndCountermovementJumps,
}
