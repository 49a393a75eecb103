namespace Jumpwright.App.Commands;

/// <summary>A mistake in how a command was called, in a sentence for the person who typed it.</summary>
internal sealed class UsageException(string sentence) : Exception(sentence);
