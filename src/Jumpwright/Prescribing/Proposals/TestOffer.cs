using Jumpwright.Quantities;

namespace Jumpwright.Prescribing.Proposals;

/// <summary>A question that a test would answer, with the test that may be done now, or what stands against it.</summary>
/// <param name="Question">What it would settle, in a few words.</param>
/// <param name="Test">The proposal, or the sentence why none is made.</param>
public sealed record TestOffer(Sentence Question, Outcome<TestProposal> Test)
{
    /// <summary>Why no test is offered where none is needed.</summary>
    internal static Sentence KnownWellEnough { get; } = Sentence.Of($"known well enough");
}
