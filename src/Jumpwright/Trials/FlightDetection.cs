namespace Jumpwright.Trials;

/// <summary>
/// Splits a recording into contacts and flights. The threshold adapts to the empty plate's own level and noise; a run counts
/// only if it lasts, so that noise, a ringing plate and a dropped sample make neither a flight nor a contact; instants lie
/// between samples, where the edge of the force meets the plate's zero.
/// </summary>
internal static class FlightDetection
{
    /// <summary>No contact of a person and no flight worth the name is shorter.</summary>
    private const double ShortestRunS = 0.04;

    /// <summary>Part of the load above which a plate surely carries somebody.</summary>
    private const double LoadedPart = 0.10;

    /// <summary>The contacts in order of time.</summary>
    /// <param name="forceN">Total force, zero not corrected, N.</param>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <param name="levels">Rough levels of the plate.</param>
    /// <param name="emptyNoiseN">Deviation of the empty plate's samples, N; null for a first look.</param>
    public static List<Contact> Contacts(
        ReadOnlySpan<double> forceN,
        double rateHz,
        PlateLevels levels,
        double? emptyNoiseN = null
    )
    {
        double loaded = levels.ZeroN + Math.Max(Math.Max(LoadedPart * levels.LoadN, 6 * levels.NoiseN), 15);
        List<Stretch> runs = Runs(forceN, loaded, Math.Max((int)(ShortestRunS * rateHz), 4));
        var contacts = new List<Contact>(runs.Count);
        foreach (Stretch run in runs)
        {
            Instant? touchDown =
                run.From == 0 ? null : EdgeReading.Of(forceN, rateHz, run.From, -1, levels, emptyNoiseN);
            Instant? takeOff =
                run.To == forceN.Length ? null : EdgeReading.Of(forceN, rateHz, run.To - 1, +1, levels, emptyNoiseN);
            contacts.Add(new Contact(run, touchDown, takeOff));
        }

        if (emptyNoiseN is { } noise)
        {
            if (!RingingEdges.Read(forceN, rateHz, levels, noise, contacts))
            {
                PlateSwing.Widen(forceN, rateHz, levels, noise, contacts);
            }

            SoftEdges.Name(forceN, rateHz, levels, noise, contacts);
            TrailingEdges.Name(forceN, rateHz, levels, contacts);
        }

        return contacts;
    }

    private static List<Stretch> Runs(ReadOnlySpan<double> forceN, double loaded, int shortest)
    {
        var runs = new List<Stretch>();
        for (int i = 0; i < forceN.Length; )
        {
            int from = Samples.First(forceN, i, loaded, above: true);
            i = Samples.First(forceN, from, loaded, above: false);
            if (i > from)
            {
                runs.Add(new Stretch(from, i));
            }
        }

        // A short contact right before a long one is the first touch of a landing; any other is the plate ringing.
        for (int k = runs.Count - 1; k >= 0; k--)
        {
            // A recording may begin with the last of a contact or end with the first of a landing.
            bool cut = (runs[k].From == 0 || runs[k].To == forceN.Length) && runs[k].Length >= 3;
            if (runs[k].Length >= shortest || cut)
            {
                continue;
            }

            int after = k + 1 < runs.Count ? runs[k + 1].From - runs[k].To : int.MaxValue;
            int before = runs[k].From - (k > 0 ? runs[k - 1].To : int.MinValue / 2);
            if (after < shortest && after < before)
            {
                runs[k + 1] = new Stretch(runs[k].From, runs[k + 1].To);
            }

            runs.RemoveAt(k);
        }

        for (int k = runs.Count - 1; k > 0; k--)
        {
            if (runs[k].From - runs[k - 1].To < shortest)
            {
                runs[k - 1] = new Stretch(runs[k - 1].From, runs[k].To);
                runs.RemoveAt(k);
            }
        }

        return runs;
    }
}
