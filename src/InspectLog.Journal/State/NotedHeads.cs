using System.Collections.Immutable;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.State;

/// <summary>Which journals there should be, and how far they were, as the workshop's journal has noted it. Immutable.</summary>
public sealed record NotedHeads
{
    /// <summary>Nothing noted.</summary>
    public static readonly NotedHeads None = new();

    /// <summary>The vehicles, each as it was last noted.</summary>
    public ImmutableSortedDictionary<string, NotedJournal> Vehicles { get; private init; } =
        ImmutableSortedDictionary.Create<string, NotedJournal>(StringComparer.Ordinal);

    /// <summary>What vehicles noted of the workshop's journal that a person went on without.</summary>
    public ImmutableHashSet<(long Entries, string Head)> LostOfWorkshop { get; private init; } = [];

    /// <summary>Whether anything was ever noted.</summary>
    public bool IsAny { get; private init; }

    /// <summary>With the vehicles of a note.</summary>
    public NotedHeads With(VehiclesNoted noted) => this with
    {
        IsAny = true,
        Vehicles = Vehicles.SetItems(noted.Vehicles.Select(one => KeyValuePair.Create(one.Id, one))),
    };

    /// <summary>Without what a person goes on without; what was noted anew since stays.</summary>
    public NotedHeads Without(LossAccepted loss) => loss switch
    {
        { Vehicle: null } => this with { LostOfWorkshop = LostOfWorkshop.Add((loss.Entries, loss.Head)) },
        { Vehicle: { } id } when Vehicles.GetValueOrDefault(id) == new NotedJournal(id, loss.Entries, loss.Head) =>
            this with { Vehicles = Vehicles.Remove(id) },
        _ => this,
    };
}
