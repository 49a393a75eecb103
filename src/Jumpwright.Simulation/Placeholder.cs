namespace Jumpwright.Simulation;

internal static class Placeholder;
