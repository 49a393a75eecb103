using Jumpwright.Athletes;
using NodaTime;

namespace Jumpwright.App.Wording;

/// <summary>Symptoms and restrictions in plain words: site, side, when, how bad, who said so.</summary>
internal static class SymptomWords
{
    public static string Of(SymptomReport report)
    {
        var said = new List<string> { $"{report.Site}, {Words.Of(report.Side)}" };
        said.Add(
            report.Kind.Replace('-', ' ')
                + (report.When is { Length: > 0 } when ? " " + When(when) : "")
                + (report.Score is { } score ? $", {ItemWords.Number(score)} of 10" : "")
        );
        if (report.Tissue is { Length: > 0 } tissue)
        {
            said.Add(
                report.NamedBy is { Length: > 0 } by
                    ? $"{tissue}, named by {by}"
                    : $"{tissue}, named by nobody licensed"
            );
        }

        if (report.Note is { Length: > 0 } note)
        {
            said.Add(note);
        }

        return string.Join("; ", said) + ".";
    }

    public static string Of(Restriction restriction, LocalDate day)
    {
        var said = new List<string>();
        string by = restriction.SetBy is { Length: > 0 } who ? who : "nobody named";
        said.Add($"set by {by}" + (restriction.Role is { Length: > 0 } role ? $", {role}" : ""));
        said.Add(
            restriction.Until is not { } until ? "no end written"
            : until < day ? $"expired {Dates.Short(until)}: ask"
            : $"until {Dates.Short(until)}"
        );
        if (restriction.Allowed.Length > 0)
        {
            said.Add("allowed: " + string.Join(", ", restriction.Allowed));
        }

        if (restriction.Forbidden.Length > 0)
        {
            said.Add("forbidden: " + string.Join(", ", restriction.Forbidden));
        }

        if (restriction.Limit is { Length: > 0 } limit)
        {
            said.Add("limit: " + limit);
        }

        if (restriction.Note is { Length: > 0 } note)
        {
            said.Add(note);
        }

        return string.Join("; ", said) + ".";
    }

    private static string When(string when) =>
        when switch
        {
            "next-morning" => "the next morning",
            "rest" => "at rest",
            "night" => "at night",
            "during" => "during exercise",
            "after" => "after exercise",
            _ => when,
        };
}
