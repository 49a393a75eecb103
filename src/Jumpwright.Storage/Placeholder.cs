namespace Jumpwright.Storage;

internal static class Placeholder;
