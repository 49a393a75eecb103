namespace Jumpwright.Trials;

/// <summary>Mean and variance over every so many neighbours of a list, from the first on, counted from a zero.</summary>
internal ref struct RunningMeans(ReadOnlySpan<double> values, double zero, int width)
{
    private readonly ReadOnlySpan<double> _values = values;
    private int _next;
    private double _sum;
    private double _squares;

    public (double Mean, double Variance) Current { get; private set; }

    public readonly RunningMeans GetEnumerator() => this;

    public bool MoveNext()
    {
        while (_next < _values.Length)
        {
            double f = _values[_next] - zero;
            _sum += f;
            _squares += f * f;
            if (_next >= width)
            {
                double old = _values[_next - width] - zero;
                _sum -= old;
                _squares -= old * old;
            }

            if (++_next >= width)
            {
                double mean = _sum / width;
                Current = (mean, (_squares / width) - (mean * mean));
                return true;
            }
        }

        return false;
    }
}
