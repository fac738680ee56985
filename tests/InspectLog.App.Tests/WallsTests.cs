using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using static ArchUnitNET.Fluent.ArchRuleDefinition;
using Assembly = System.Reflection.Assembly;
using GivenTypes = ArchUnitNET.Fluent.Syntax.Elements.Types.GivenTypesConjunction;
using TypesRule = ArchUnitNET.Fluent.Syntax.Elements.Types.TypesShouldConjunction;

namespace InspectLog.App.Tests;

/// <summary>Holds the walls between the rooms: which room may know of which, and which packages stay in one room.
/// </summary>
public sealed class WallsTests
{
    private const string App = "App";

    private static readonly IReadOnlyDictionary<string, Assembly> Rooms = new Dictionary<string, Assembly>
    {
        ["Measuring"] = typeof(Measuring.Limits).Assembly,
        ["Checks"] = typeof(Checks.CheckSheet).Assembly,
        ["Doubts"] = typeof(Doubts.Doubt).Assembly,
        ["Dictation"] = typeof(Dictation.Hearing.PcmAudio).Assembly,
        ["Photos"] = typeof(Photos.PhotoIntake).Assembly,
        ["Journal"] = typeof(Journal.Garage).Assembly,
        ["Archives"] = typeof(Archives.ArchiveLayout).Assembly,
        ["Inspecting"] = typeof(Inspecting.BenchScene).Assembly,
        ["Paper"] = typeof(Paper.PaperWriter).Assembly,
        [App] = typeof(Links).Assembly,
    };

    private static readonly Architecture House = new ArchLoader().LoadAssemblies([.. Rooms.Values]).Build();

    /// <summary>Each room with the rooms it may know of.</summary>
    public static TheoryData<string, string[]> Walls => new()
    {
        { "Measuring", [] },
        { "Checks", ["Measuring"] },
        { "Doubts", [] },
        { "Dictation", ["Checks", "Measuring", "Doubts"] },
        { "Photos", [] },
        { "Journal", ["Measuring", "Doubts"] },
        { "Archives", ["Journal"] },
        { "Inspecting", ["Measuring", "Checks", "Doubts", "Dictation", "Journal"] },
        { "Paper", [] },
        { App, ["Measuring", "Checks", "Doubts", "Dictation", "Photos", "Journal", "Archives", "Inspecting", "Paper"] },
    };

    /// <summary>Namespaces from outside that one room alone may use.</summary>
    public static TheoryData<string, string> Packages => new()
    {
        { "Microsoft.AspNetCore", App },
        { "System.CommandLine", App },
        { "LiteDB", "Journal" },
        { "System.IO.Hashing", "Archives" },
        { "Whisper.net", "Dictation" },
        { "SixLabors.ImageSharp", "Photos" },
        { "MathNet.Numerics", "Measuring" },
        { "PdfSharp", "Paper" },
        { "AngleSharp", App },
    };

    [Theory]
    [MemberData(nameof(Walls))]
    public void A_room_knows_only_the_rooms_it_may(string room, string[] known) =>
        Assert.Empty(Rooms.Keys.Except([room, .. known]).SelectMany(other => BreachesBetween(room, other)));

    [Theory]
    [MemberData(nameof(Packages))]
    public void A_package_is_used_in_one_room_only(string package, string room)
    {
        Assert.NotEmpty(UsesOf(package, room));
        Assert.Empty(Rooms.Keys.Except([room]).SelectMany(other => UsesOf(package, other)));
    }

    [Fact]
    public void Every_room_of_the_house_has_walls()
    {
        var built = Directory.GetFiles(AppContext.BaseDirectory, "InspectLog.*.dll")
            .Select(file => Path.GetFileNameWithoutExtension(file)["InspectLog.".Length..])
            .Where(name => !name.EndsWith(".Tests", StringComparison.Ordinal) && name != "TestWorker")
            .Append(App);

        Assert.Equal(built.Order(), Rooms.Keys.Order());
        Assert.Equal(built.Order(), Walls.Select(row => row.Data.Item1).Order());
    }

    /// <summary>The features of the app stand side by side: where one uses another, that one does not use it back, on no
    /// way round.</summary>
    [Fact]
    public void Features_of_the_app_do_not_use_each_other_in_a_circle()
    {
        var uses = House.Types.Where(type => FeatureOf(type) is not null)
            .SelectMany(type => type.Dependencies.Select(one => (From: FeatureOf(type)!, To: FeatureOf(one.Target))))
            .Where(one => one.To is not null && one.To != one.From)
            .ToLookup(one => one.From, one => one.To!);

        Assert.True(uses.Count > 5);
        Assert.Empty(uses.SelectMany(from => Reached(from.Key, uses).Where(to => Reached(to, uses).Contains(from.Key))
            .Select(to => $"{from.Key} uses {to} and is used by it")));
    }

    /// <summary>A control: rooms do use each other where they may, so rules that say they do not must fail. Without
    /// this, rules that look at nothing would pass for ever.</summary>
    [Fact]
    public void Rules_fail_where_a_room_is_known()
    {
        Assert.NotEmpty(BreachesBetween(App, "Journal"));
        Assert.NotEmpty(BreachesBetween("Checks", "Measuring"));
    }

    /// <summary>The feature a type of the app belongs to: the first name below the app's own. Features are wired
    /// together by what starts the program, which is none itself.</summary>
    private static string? FeatureOf(IType type) =>
        type.FullName.Split('.') is ["InspectLog", App, var feature, _, ..] && feature is not ("Hosting" or "Commands") ? feature : null;

    private static HashSet<string> Reached(string from, ILookup<string, string> uses)
    {
        var reached = new HashSet<string>();
        var next = new Stack<string>(uses[from]);
        while (next.TryPop(out var one))
        {
            foreach (var further in reached.Add(one) ? uses[one] : [])
            {
                next.Push(further);
            }
        }

        return reached;
    }

    private static IEnumerable<string> BreachesBetween(string room, string other) =>
        Breaches(TypesOf(room).Should().NotDependOnAny(Types(true).That().ResideInAssembly(Rooms[other])));

    private static IEnumerable<string> UsesOf(string package, string room) =>
        Breaches(TypesOf(room).Should().NotDependOnAny(
            Types(true).That().ResideInNamespaceMatching($@"^{package.Replace(".", @"\.", StringComparison.Ordinal)}(\.|$)")));

    private static GivenTypes TypesOf(string room) => Types().That().ResideInAssembly(Rooms[room]);

    private static IEnumerable<string> Breaches(TypesRule rule) =>
        rule.Evaluate(House).Where(result => !result.Passed).Select(result => result.Description);
}
