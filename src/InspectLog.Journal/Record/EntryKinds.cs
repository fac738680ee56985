using System.Collections.Frozen;
using System.Reflection;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Record;

/// <summary>Which record stands for which kind and version.</summary>
internal static class EntryKinds
{
    private static readonly FrozenDictionary<Type, EntryKindAttribute> ByType = typeof(EntryBody).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(EntryBody)) && !type.IsAbstract)
        .ToFrozenDictionary(type => type, type => type.GetCustomAttribute<EntryKindAttribute>()!);

    private static readonly FrozenDictionary<(string, int), Type> ByKind =
        ByType.ToFrozenDictionary(pair => (pair.Value.Kind, pair.Value.Version), pair => pair.Key);

    private static readonly FrozenDictionary<string, int[]> Versions = ByType.Values
        .GroupBy(kind => kind.Kind, kind => kind.Version)
        .ToFrozenDictionary(versions => versions.Key, versions => versions.ToArray(), StringComparer.Ordinal);

    /// <summary>Every record an entry's body can be.</summary>
    public static IReadOnlyCollection<Type> All => ByType.Keys;

    /// <summary>The kind and version a body is written under.</summary>
    public static EntryKindAttribute Of(EntryBody body) => ByType[body.GetType()];

    /// <summary>The kind a record is written under.</summary>
    public static string KindOf(Type body) => ByType[body].Kind;

    /// <summary>Whether this program knows a kind and version.</summary>
    public static bool Knows(ReadOnlySpan<char> kind, int version) =>
        Versions.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(kind, out var versions) && versions.Contains(version);

    /// <summary>The record for a kind and version; null when this program knows none.</summary>
    public static Type? Find(string kind, int version) => ByKind.GetValueOrDefault((kind, version));
}
