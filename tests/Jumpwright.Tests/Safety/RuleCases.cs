using NodaTime;
using static Jumpwright.Tests.Safety.Patient;

namespace Jumpwright.Tests.Safety;

/// <summary>For every rule, a case it just closes for and one it just leaves alone.</summary>
internal static class RuleCases
{
    private static readonly LocalDate Operation = Today.PlusMonths(-4);

    internal static IReadOnlyList<RuleCase> All { get; } =
    [
        new("stop-sign", true, "new swelling", Well.Felt("knee", "swelling", null, 2, 3)),
        new(
            "stop-sign",
            true,
            "giving way, months ago, never looked at",
            Well.Felt("knee", "giving-way", null, null, 90)
        ),
        new("stop-sign", true, "locking", Well.Felt("knee", "locking", null, null, 1)),
        new("stop-sign", true, "numbness", Well.Felt("foot", "numbness", null, null, 1)),
        new("stop-sign", true, "pain at rest", Well.Felt("knee", "pain", "rest", 1, 1)),
        new("stop-sign", true, "pain at night", Well.Felt("knee", "pain", "night", 1, 1)),
        new(
            "stop-sign",
            true,
            "a felt pop, in the note",
            Well.Felt("calf", "other", null, null, 1, note: "felt a pop")
        ),
        new("stop-sign", true, "a head knock", Well.Felt("head", "other", null, null, 1)),
        new("stop-sign", true, "chest pain", Well.Felt("chest", "pain", "during", 2, 1)),
        new("stop-sign", true, "a faint", Well.Felt("", "other", null, null, 1, note: "fainted after training")),
        new("stop-sign", true, "a kind nobody can read", Well.Felt("knee", "wobbly", null, null, 1)),
        new(
            "stop-sign",
            true,
            "lifted by somebody without a licensed role",
            Well.Felt("knee", "swelling", null, 2, 3).Restricted("stop-sign-lifted", role: "coach", fromDaysAgo: 1)
        ),
        new(
            "stop-sign",
            true,
            "lifted the day before it was reported",
            Well.Felt("knee", "swelling", null, 2, 3).Restricted("stop-sign-lifted", fromDaysAgo: 4)
        ),
        new(
            "stop-sign",
            true,
            "lifted by a personal trainer who signs PT",
            Well.Felt("knee", "swelling", null, 2, 3).Restricted("stop-sign-lifted", role: "PT", fromDaysAgo: 1)
        ),
        new(
            "stop-sign",
            true,
            "lifted by a coach who spoke with the physiotherapist",
            Well.Felt("knee", "swelling", null, 2, 3)
                .Restricted("stop-sign-lifted", role: "coach, after a call with the physiotherapist", fromDaysAgo: 1)
        ),
        new(
            "stop-sign",
            true,
            "lifted for the other knee",
            Well.Felt("knee", "swelling", null, 2, 3)
                .Restricted("stop-sign-lifted", fromDaysAgo: 1, site: "knee", side: Jumpwright.Athletes.Side.Right)
        ),
        new(
            "stop-sign",
            true,
            "a knee that gave-way, in a note",
            Well.Felt("knee", "pain", "during", 1, 1, note: "it gave-way once")
        ),
        new(
            "stop-sign",
            true,
            "a knee that does not straighten",
            Well.Felt("knee", "pain", "during", 1, 1, note: "can't straighten it")
        ),
        new(
            "stop-sign",
            false,
            "a snap-down is no snap",
            Well.Felt("knee", "pain", "during", 1, 1, note: "in the last snap-down")
        ),
        new("stop-sign", false, "a pop denied", Well.Felt("knee", "pain", "during", 1, 1, note: "no pop")),
        new(
            "stop-sign",
            false,
            "lifted by a physiotherapist the same day",
            Well.Felt("knee", "swelling", null, 2, 3).Restricted("stop-sign-lifted", fromDaysAgo: 3)
        ),
        new("stop-sign", false, "swelling denied", Well.Felt("knee", "swelling", null, 0, 3)),
        new("stop-sign", false, "pain after work only", Well.Felt("knee", "pain", "after", 2, 1)),
        new("restriction", true, "forbids depth jumps", Well.Restricted(forbidden: "depth-jump")),
        new("restriction", true, "limits drops", Well.Restricted(limit: "drops <= 0.20 m")),
        new("restriction", true, "expired yesterday", Well.Restricted(forbidden: "depth-jump", untilInDays: -1)),
        new("restriction", true, "a word nobody knows", Well.Restricted(forbidden: "hop until it hurts!")),
        new("restriction", true, "nobody's name", Well.Restricted("all", by: null)),
        new("restriction", true, "no role", Well.Restricted("all", role: null)),
        new("restriction", true, "forbids all", Well.Restricted(forbidden: "all")),
        new(
            "restriction",
            true,
            "expired, and only a coach wrote since",
            Well.Restricted(forbidden: "depth-jump", untilInDays: -1).Restricted("all", role: "coach", fromDaysAgo: 1)
        ),
        new("restriction", true, "its last day is today", Well.Restricted(forbidden: "depth-jump", untilInDays: 0)),
        new("restriction", false, "allows everything", Well.Restricted("all")),
        new("restriction", false, "begins tomorrow", Well.Restricted(forbidden: "depth-jump", fromDaysAgo: -1)),
        new(
            "restriction",
            false,
            "expired, and a later word allows everything",
            Well.Restricted(forbidden: "depth-jump", untilInDays: -1).Restricted("all", fromDaysAgo: 1)
        ),
        new("after-operation", true, "no written word", Well.Operated(Operation)),
        new("after-operation", true, "day unknown, no written word", Well.Operated(null)),
        new("after-operation", true, "only some exercises", Well.Operated(Operation).Restricted("snap-down")),
        new("after-operation", true, "a coach's word", Well.Operated(Operation).Restricted("all", role: "coach")),
        new(
            "after-operation",
            true,
            "a word from before the operation",
            Well.Operated(Today.PlusDays(-4)).Restricted("operation-discharged", fromDaysAgo: 5)
        ),
        new(
            "after-operation",
            false,
            "discharged by the surgeon",
            Well.Operated(Operation).Restricted("operation-discharged", role: "surgeon")
        ),
        new("tendon-pain", true, "Achilles 3 of 10 during", Well.Felt("achilles", "pain", "during", 3, 2)),
        new("tendon-pain", true, "Achilles 6 of 10 during", Well.Felt("achilles", "pain", "during", 6, 2)),
        new(
            "tendon-pain",
            true,
            "1 during, 2 next morning: the morning outranks",
            Well.Felt("achilles", "pain", "during", 1, 2).Felt("achilles", "pain", "next-morning", 2, 1)
        ),
        new("tendon-pain", false, "Achilles 2 of 10 during", Well.Felt("achilles", "pain", "during", 2, 2)),
        new(
            "tendon-pain",
            false,
            "4 of 10, then 0",
            Well.Felt("achilles", "pain", "during", 4, 9).Felt("achilles", "pain", null, 0, 1)
        ),
        new("joint-pain", true, "an ankle nobody named, 1 of 10", Well.Felt("ankle", "pain", "after", 1, 2)),
        new("joint-pain", false, "an Achilles tendon", Well.Felt("achilles", "pain", "after", 1, 2)),
        new("bone-pain", true, "shin 1 of 10", Well.Felt("shin", "pain", "after", 1, 2)),
        new(
            "bone-pain",
            true,
            "shin 1 of 10, then 0 at once",
            Well.Felt("shin", "pain", "after", 1, 2).Felt("shin", "pain", null, 0, 1)
        ),
        new(
            "bone-pain",
            false,
            "shin 1 of 10 three weeks ago, then 0",
            Well.Felt("shin", "pain", "after", 1, 21).Felt("shin", "pain", null, 0, 1)
        ),
        new(
            "bone-pain",
            false,
            "foot, named a tendon's by a physiotherapist",
            Well.Felt("foot", "pain", "after", 1, 2, "achilles tendon", "physiotherapist")
        ),
        new(
            "bone-pain",
            true,
            "foot, named a tendon's by the coach",
            Well.Felt("foot", "pain", "after", 1, 2, "achilles tendon", "coach")
        ),
        new("arm-pain", true, "wrist 3 of 10", Well.Felt("wrist", "pain", "during", 3, 2)),
        new("arm-pain", false, "wrist 2 of 10", Well.Felt("wrist", "pain", "during", 2, 2)),
        new("logged-pain", true, "3 of 10 logged", Well.Logged(3, 0)),
        new("logged-pain", false, "2 of 10 logged", Well.Logged(2, 1)),
        new("logged-pain", false, "3 of 10, then 0 in a later session", Well.Logged(3, 0, 5).Logged(0, 0)),
        new("logged-pain", true, "6 of 10 a month ago, and silence", (Well with { Symptoms = [] }).Logged(6, 0, 30)),
        new("logged-pain", false, "6 of 10 a month ago, and asked since", Well.Logged(6, 0, 30)),
        new("after-illness", true, "ill seven days ago", Well.Felt("", "illness", null, null, 7)),
        new("after-illness", false, "ill eight days ago", Well.Felt("", "illness", null, null, 8)),
        new("symptom-report-missing", true, "nobody ever asked", Well with { Symptoms = [] }),
        new(
            "symptom-report-missing",
            true,
            "asked 43 days ago",
            (Well with { Symptoms = [] }).Felt("knee", "pain", null, 0, 43)
        ),
        new(
            "symptom-report-missing",
            false,
            "asked 42 days ago",
            (Well with { Symptoms = [] }).Felt("knee", "pain", null, 0, 42)
        ),
        new("youth", true, "16 tomorrow", Well.Aged(Today.PlusYears(-16).PlusDays(1))),
        new("youth", true, "age unknown", Well.Aged(null)),
        new("youth", false, "16 today", Well.Aged(Today.PlusYears(-16))),
        new("heavy-athlete-drop", true, "100.1 kg", Well.Weighing(100.1)),
        new("heavy-athlete-drop", true, "mass unknown", Well.Weighing(null)),
        new("heavy-athlete-drop", false, "100 kg", Well.Weighing(100)),
    ];
}
