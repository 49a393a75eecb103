namespace Jumpwright.App.Desk;

/// <summary>Something made when it is first asked for, once; whoever asks meanwhile waits. A failure is not kept: the next asks again.</summary>
internal sealed class Once<T>(Func<T> make)
    where T : class
{
    private readonly Lock _making = new();
    private Func<T>? _make = make;
    private volatile T? _made;

    /// <summary>Whether it is there, so that asking costs nothing.</summary>
    public bool IsMade => _made is not null;

    public T Value
    {
        get
        {
            if (_made is { } made)
            {
                return made;
            }

            lock (_making)
            {
                if (_made is null)
                {
                    _made = _make!();
                    _make = null;
                }

                return _made;
            }
        }
    }
}
