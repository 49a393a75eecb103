using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using ArchUnitNET.Domain;
using Jumpwright.Quantities;
using Assembly = System.Reflection.Assembly;

namespace Jumpwright.Tests.House;

/// <summary>The laws of the house. Each failure says which law, where, and what to do instead.</summary>
public class HouseTests
{
    private static readonly Assembly Core = typeof(Measure).Assembly;

    [Fact]
    public void Core_EveryType_LivesInARoom()
    {
        string[] loose =
        [
            .. Core.GetTypes()
                .Where(t =>
                    !t.Name.StartsWith('<') && t.Namespace?.StartsWith("Jumpwright", StringComparison.Ordinal) == true
                )
                .Where(t => RoomOf(t.Namespace) is not { } room || !Rooms.InOrder.Contains(room))
                .Select(t => t.FullName!),
        ];
        Assert.True(
            loose.Length == 0,
            "Nothing lies loose in the core's root; move into a room: " + string.Join(", ", loose)
        );
    }

    [Fact]
    public void Rooms_UseOnlyRoomsAboveThem()
    {
        string[] breaches = [.. BreachesOfOrder(Rooms.InOrder)];
        Assert.True(
            breaches.Length == 0,
            "Data flows one way, so a room uses rooms above it, never below. Move the shared word up, or pass it in:\n"
                + string.Join("\n", breaches)
        );
    }

    [Fact]
    public void Rooms_OrderTurnedRound_IsNoticed() => Assert.NotEmpty(BreachesOfOrder([.. Rooms.InOrder.Reverse()]));

    [Fact]
    public void Exceptions_ThatNoLongerHappen_AreStruckFromTheList()
    {
        HashSet<(string, string)> seen = [.. UsesAcrossRooms().Select(u => (u.From, u.To))];
        Assert.All(Rooms.Exceptions, e => Assert.Contains(e, seen));
    }

    /// <summary>
    /// Sines of vectors of fixed width have another last digit in the library's precompiled code than in the final one (seen on .NET 10 with 59 of
    /// 160,000), and an estimate may have on another machine: one recording would not always give one number.
    /// </summary>
    [Fact]
    public void Core_AsksNoVector_ForSinesOrEstimates()
    {
        string[] unsteady = ["Sin", "Cos", "SinCos", "MultiplyAddEstimate"];
        string[] found =
        [
            .. MembersUsed(Core)
                .Where(m => m.Type is "Vector128" or "Vector256" or "Vector512")
                .Where(m => unsteady.Contains(m.Name))
                .Select(m => m.Type + "." + m.Name),
        ];
        Assert.True(
            found.Length == 0,
            "Take them one by one from Math, or FusedMultiplyAdd: " + string.Join(", ", found)
        );
        Assert.Contains(MembersUsed(Core), m => m is { Type: "Vector512", Name: "Exp" });
    }

    private static HashSet<(string Type, string Name)> MembersUsed(Assembly assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly.Location));
        MetadataReader reader = file.GetMetadataReader();
        HashSet<(string, string)> used = [];
        foreach (MemberReferenceHandle handle in reader.MemberReferences)
        {
            MemberReference member = reader.GetMemberReference(handle);
            if (member.Parent.Kind == HandleKind.TypeReference)
            {
                TypeReference type = reader.GetTypeReference((TypeReferenceHandle)member.Parent);
                used.Add((reader.GetString(type.Name), reader.GetString(member.Name)));
            }
        }

        return used;
    }

    [Fact]
    public void Core_References_OnlyTheBaseLibraryMathNetAndNodaTime()
    {
        string[] foreign =
        [
            .. Core.GetReferencedAssemblies()
                .Select(a => a.Name!)
                .Where(n =>
                    !n.StartsWith("System", StringComparison.Ordinal) && n is not ("MathNet.Numerics" or "NodaTime")
                ),
        ];
        Assert.True(
            foreign.Length == 0,
            "A heavy package belongs behind a fence project: " + string.Join(", ", foreign)
        );
    }

    [Theory]
    [InlineData("System.IO.File", "the core does no I/O; take bytes")]
    [InlineData("System.IO.Directory", "the core does no I/O; take bytes")]
    [InlineData("System.IO.FileStream", "the core does no I/O; take bytes")]
    [InlineData("System.Console", "the core knows no screen; return a record")]
    [InlineData("System.Random", "the core is deterministic; the simulator has its own generator")]
    [InlineData("System.Diagnostics.Stopwatch", "the core knows no clock; time comes in as a parameter")]
    [InlineData("System.TimeProvider", "the core knows no clock; the day comes in as a parameter")]
    [InlineData("NodaTime.SystemClock", "the core knows no clock; the day comes in as a parameter")]
    [InlineData("System.Net.Http.HttpClient", "the core knows no network")]
    [InlineData("System.NotImplementedException", "a stub is not a result")]
    public void Core_NeverTouches(string forbidden, string instead)
    {
        string[] where =
        [
            .. TypeUses
                .All()
                .Where(u => u.To.FullName == forbidden)
                .Select(u => u.From.FullName)
                .Distinct(StringComparer.Ordinal),
        ];
        Assert.True(where.Length == 0, $"{forbidden}: {instead}. Found in: {string.Join(", ", where)}");
    }

    [Fact]
    public void Core_Touches_WhatItIsKnownToTouch() =>
        Assert.Contains(TypeUses.All(), u => u.To.FullName == "NodaTime.LocalDate");

    [Fact]
    public void Core_NeverAsksForNow()
    {
        string[] where =
        [
            .. TypeUses
                .Calls()
                .Where(c =>
                    c.Member.Contains("System.DateTime", StringComparison.Ordinal)
                    && (
                        c.Member.Contains("get_Now", StringComparison.Ordinal)
                        || c.Member.Contains("get_UtcNow", StringComparison.Ordinal)
                        || c.Member.Contains("get_Today", StringComparison.Ordinal)
                    )
                )
                .Select(c => c.From.FullName),
        ];
        Assert.True(where.Length == 0, "The day comes in as a parameter: " + string.Join(", ", where));
    }

    [Fact]
    public void Records_OfTheCore_AreImmutable()
    {
        string[] mutable =
        [
            .. Core.GetExportedTypes()
                .Where(t => t.IsClass && t.GetMethod("<Clone>$") is not null)
                .SelectMany(t => t.GetProperties().Where(CanBeSetLater).Select(p => $"{t.Name}.{p.Name}")),
        ];
        Assert.True(mutable.Length == 0, "Results are immutable records; use init: " + string.Join(", ", mutable));
    }

    private static bool CanBeSetLater(PropertyInfo property) =>
        property.SetMethod is { IsPublic: true } set
        && !set
            .ReturnParameter.GetRequiredCustomModifiers()
            .Contains(typeof(System.Runtime.CompilerServices.IsExternalInit));

    private static string? RoomOf(string? name) =>
        name?.StartsWith("Jumpwright.", StringComparison.Ordinal) == true ? name.Split('.')[1] : null;

    private static IEnumerable<string> BreachesOfOrder(IReadOnlyList<string> order)
    {
        Dictionary<string, int> place = order
            .Select((room, index) => (room, index))
            .ToDictionary(p => p.room, p => p.index, StringComparer.Ordinal);
        return UsesAcrossRooms()
            .Where(u => place.TryGetValue(u.From, out int from) && place.TryGetValue(u.To, out int to) && to > from)
            .Where(u => !Rooms.Exceptions.Contains((u.From, u.To)))
            .Select(u => $"  {u.From} uses {u.To}: {u.Where} → {u.What}")
            .Distinct(StringComparer.Ordinal);
    }

    private static IEnumerable<(string From, string To, string Where, string What)> UsesAcrossRooms() =>
        from use in TypeUses.All()
        let room = RoomOf(NamespaceOf(use.From))
        let other = RoomOf(NamespaceOf(use.To))
        where room is not null && other is not null && room != other
        select (room, other, use.From.FullName, use.To.FullName);

    private static string? NamespaceOf(IType type) => type.Namespace?.FullName;
}
