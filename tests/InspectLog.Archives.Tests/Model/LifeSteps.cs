using CsCheck;

namespace InspectLog.Archives.Tests.Model;

/// <summary>What may be done to a garage; numbers choose among what there is.</summary>
internal abstract record LifeStep
{
    public static readonly IReadOnlyList<string> People = ["Ana Lindqvist", "Ben Osei", "Tess Okafor"];

    private static readonly Gen<int> Which = Gen.Int[0, 5];
    private static readonly Gen<string> Whoever = Gen.Int[0, 2].Select(at => People[at]);

    public static Gen<LifeStep> Generated { get; } = Gen.Frequency(
        (2, Gen.Const((LifeStep)new Add())),
        (5, Gen.Select(Which, Whoever, Gen.Int[0, 3], (vehicle, by, named) => (LifeStep)new Write(vehicle, by, named < 3 ? People[named] : null))),
        (4, Gen.Select(Which, Whoever, (vehicle, by) => (LifeStep)new Say(vehicle, by))),
        (3, Gen.Select(Which, Whoever, (vehicle, owner) => (LifeStep)new Own(vehicle, owner))),
        (3, Gen.Select(Which, Which, (vehicle, note) => (LifeStep)new LeaveOut(vehicle, note))),
        (2, Gen.Const((LifeStep)new Restart())),
        (2, Gen.Const((LifeStep)new Crash())),
        (3, Gen.Const((LifeStep)new BackUp())),
        (2, Gen.Const((LifeStep)new PutBack())),
        (3, Gen.Select(Which, Gen.Bool, (vehicle, buyer) => (LifeStep)new Export(vehicle, buyer))),
        (3, Which.Select(archive => (LifeStep)new Import(archive))),
        (4, Gen.Select(Whoever, Gen.Bool, (person, worker) => (LifeStep)new Erase(person, worker))));

    public sealed record Add : LifeStep;

    public sealed record Write(int Vehicle, string By, string? Naming) : LifeStep;

    public sealed record Say(int Vehicle, string By) : LifeStep;

    public sealed record Own(int Vehicle, string Owner) : LifeStep;

    public sealed record LeaveOut(int Vehicle, int Note) : LifeStep;

    public sealed record Restart : LifeStep;

    /// <summary>Opened again without having been closed: a copy of the files as they are.</summary>
    public sealed record Crash : LifeStep;

    public sealed record BackUp : LifeStep;

    public sealed record PutBack : LifeStep;

    public sealed record Export(int Vehicle, bool ForBuyer) : LifeStep;

    public sealed record Import(int Archive) : LifeStep;

    public sealed record Erase(string Person, bool AsWorker) : LifeStep;
}
