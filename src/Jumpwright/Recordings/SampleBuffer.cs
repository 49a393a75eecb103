namespace Jumpwright.Recordings;

/// <summary>Doubles that grow by doubling: no allocation per sample.</summary>
internal struct SampleBuffer
{
    private double[] _values;

    public SampleBuffer(int capacity) => _values = new double[Math.Max(capacity, 64)];

    public int Count { get; private set; }

    public readonly ReadOnlySpan<double> Span => _values.AsSpan(0, Count);

    public readonly ReadOnlyMemory<double> Memory => _values.AsMemory(0, Count);

    public void Add(double value)
    {
        if (Count == _values.Length)
        {
            Array.Resize(ref _values, _values.Length * 2);
        }

        _values[Count++] = value;
    }
}
