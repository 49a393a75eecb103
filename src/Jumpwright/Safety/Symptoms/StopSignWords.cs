using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>
/// Stop signs in free words. Generous on purpose: a word too many sends somebody to a clinician, a word too few sends somebody to
/// jump. Only a word right after "no", "not", "without", "never" or "denies" is passed over.
/// </summary>
internal static class StopSignWords
{
    private static readonly (Sentence Sign, string[] Phrases)[] Signs =
    [
        (
            $"a felt pop",
            [
                "pop",
                "popped",
                "popping",
                "snap",
                "snapped",
                "crack",
                "cracked",
                "tore",
                "torn",
                "tear",
                "ruptured",
                "rupture",
            ]
        ),
        (
            $"a head knock",
            ["head", "concussion", "concussed", "skull", "unconscious", "knocked out", "temple", "jaw", "headache"]
        ),
        (
            $"chest pain",
            ["chest", "heart", "palpitations", "sternum", "short of breath", "breathless", "breathlessness"]
        ),
        (
            $"a faint",
            [
                "faint",
                "fainted",
                "fainting",
                "passed out",
                "blackout",
                "black out",
                "blacked out",
                "collapsed",
                "collapse",
                "dizzy",
                "dizziness",
                "light headed",
                "lightheaded",
                "syncope",
            ]
        ),
        ($"swelling", ["swelling", "swollen", "swelled", "swells", "puffy", "effusion", "fluid on"]),
        ($"giving way", ["giving way", "gave way", "gives way", "buckled", "buckles", "buckling"]),
        (
            $"locking",
            [
                "locking",
                "locked",
                "locks",
                "stuck",
                "cannot straighten",
                "can t straighten",
                "cannot bend",
                "can t bend",
            ]
        ),
        ($"numbness", ["numb", "numbness", "tingling", "tingles", "pins and needles", "no feeling"]),
        ($"pain at rest or at night", ["at rest", "at night", "resting", "woke", "wakes", "waking"]),
    ];

    private static readonly string[] Denials = ["no", "not", "without", "never", "denies", "denied"];

    /// <summary>The first sign the words speak of, or null.</summary>
    public static Sentence? Find(params ReadOnlySpan<string?> texts)
    {
        foreach (string? text in texts)
        {
            // "gave-way" is "gave way"; only the exercise keeps its hyphen, so that a snap-down is no snap.
            string[] words =
            [
                .. TextWords.Of(text).SelectMany(w => w is "snap-down" or "snap-downs" ? [w] : w.Split('-')),
            ];
            foreach ((Sentence sign, string[] phrases) in Signs)
            {
                if (phrases.Any(phrase => Says(words, phrase.Split(' '))))
                {
                    return sign;
                }
            }
        }

        return null;
    }

    private static bool Says(string[] words, string[] phrase)
    {
        for (int at = 0; at + phrase.Length <= words.Length; at++)
        {
            if (
                words.AsSpan(at, phrase.Length).SequenceEqual(phrase)
                && (at == 0 || !Denials.Contains(words[at - 1], StringComparer.Ordinal))
            )
            {
                return true;
            }
        }

        return false;
    }
}
