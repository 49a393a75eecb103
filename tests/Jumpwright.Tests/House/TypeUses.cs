using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.House;

/// <summary>Which types and members the core's types use: in signatures, fields, attributes and inside method bodies.</summary>
internal static class TypeUses
{
    private static readonly Lazy<Architecture> Loaded = new(() =>
        new ArchLoader().LoadAssemblies(typeof(Measure).Assembly).Build()
    );

    /// <summary>Every type of the core with every type it depends on.</summary>
    public static IEnumerable<(IType From, IType To)> All() =>
        from type in Loaded.Value.Types
        from dependency in type.Dependencies
        select (type, dependency.Target);

    /// <summary>Every type of the core with the members it calls.</summary>
    public static IEnumerable<(IType From, string Member)> Calls() =>
        from type in Loaded.Value.Types
        from dependency in type.Dependencies.OfType<ArchUnitNET.Domain.Dependencies.MethodCallDependency>()
        select (type, dependency.TargetMember.FullName);
}
