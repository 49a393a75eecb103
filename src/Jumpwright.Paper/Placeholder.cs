namespace Jumpwright.Paper;

internal static class Placeholder;
