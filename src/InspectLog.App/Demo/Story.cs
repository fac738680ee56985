using System.Text.Json;
using System.Text.Json.Serialization;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Demo;

/// <summary>The story of the demo garage as data: <c>demo/garage.json</c>. Played through the program's own services,
/// it gives the garage that the <c>demo</c> verb opens.</summary>
/// <param name="People">Who works here.</param>
/// <param name="Instruments">The workshop's instruments, in the order they are added.</param>
/// <param name="Recordings">What is said in each recording.</param>
/// <param name="Vehicles">The vehicles, in the order they came to the garage.</param>
public sealed record Story(
    IReadOnlyList<Person> People,
    IReadOnlyList<Instrument> Instruments,
    IReadOnlyList<StoryRecording> Recordings,
    IReadOnlyList<StoryVehicle> Vehicles)
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>Reads a story.</summary>
    /// <exception cref="JsonException">It is not one: a member is missing, unknown or of the wrong type.</exception>
    public static Story Read(ReadOnlySpan<byte> json) =>
        JsonSerializer.Deserialize<Story>(json, Strict) ?? throw new JsonException("The story is empty.");
}

/// <summary>Somebody who works in the demo garage.</summary>
/// <param name="Name">An invented name.</param>
/// <param name="Role">What they do.</param>
/// <param name="Voice">The flite voice that speaks for them.</param>
public sealed record Person(string Name, string Role, string Voice);

/// <summary>A recording of the story.</summary>
/// <param name="File">Its file in <c>demo/recordings</c>.</param>
/// <param name="Speaker">Who speaks.</param>
/// <param name="Words">What is said.</param>
/// <param name="Findings">What it means.</param>
public sealed record StoryRecording(
    string File, string Speaker, string Words, IReadOnlyList<StoryFinding> Findings);

/// <summary>A finding that the words of a recording mean; one for each cylinder where there are several.</summary>
/// <param name="Kind">reading, observation or action.</param>
/// <param name="Check">Check id.</param>
/// <param name="Cylinders">The places; null for a check done once.</param>
/// <param name="Value">Value of a reading, base unit.</param>
/// <param name="Condition">Condition word of an observation.</param>
/// <param name="Action">The action.</param>
public sealed record StoryFinding(
    string Kind,
    string Check,
    IReadOnlyList<int>? Cylinders = null,
    double? Value = null,
    string? Condition = null,
    string? Action = null);

/// <summary>A vehicle of the story.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Description">Year, body, engine.</param>
/// <param name="Picture">Its picture in <c>demo/photos</c>.</param>
/// <param name="AddedBy">Who added it, when its first inspection starts.</param>
/// <param name="Engine">Engine layout.</param>
/// <param name="Limits">Limits of its own, in place of the sheet's.</param>
/// <param name="Inspections">Its inspections, oldest first.</param>
public sealed record StoryVehicle(
    string Name,
    string Description,
    string Picture,
    string AddedBy,
    EngineLayout Engine,
    IReadOnlyList<StoryLimits> Limits,
    IReadOnlyList<StoryInspection> Inspections);

/// <summary>Limits of one check for one vehicle.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Lower">Lower limit in <paramref name="Unit"/>; null for none.</param>
/// <param name="Upper">Upper limit in <paramref name="Unit"/>; null for none.</param>
/// <param name="Unit">Unit symbol.</param>
/// <param name="Source">Where they come from.</param>
public sealed record StoryLimits(string Check, double? Lower, double? Upper, string Unit, string Source);

/// <summary>An inspection of the story.</summary>
/// <param name="Sheet">Sheet id.</param>
/// <param name="Technician">Who inspects.</param>
/// <param name="Started">When it began.</param>
/// <param name="Odometer">Odometer reading as shown.</param>
/// <param name="OdometerUnit">km or mi.</param>
/// <param name="Steps">What happened, in order.</param>
public sealed record StoryInspection(
    string Sheet,
    string Technician,
    StoryTime Started,
    double Odometer,
    string OdometerUnit,
    IReadOnlyList<StoryStep> Steps);

/// <summary>A time that keeps its distance from the moment the demo is opened: either so many minutes ago, or at a time
/// of day so many days ago.</summary>
/// <param name="MinutesAgo">Minutes before the demo is opened; null with days.</param>
/// <param name="DaysAgo">Days before the day the demo is opened; null with minutes.</param>
/// <param name="At">Time of day in the workshop, with days.</param>
public sealed record StoryTime(int? MinutesAgo = null, int? DaysAgo = null, TimeOnly? At = null)
{
    /// <summary>The time it stands for.</summary>
    /// <param name="now">When the demo is opened, with the workshop's offset.</param>
    /// <exception cref="InvalidOperationException">It gives neither minutes nor a day with its time.</exception>
    public DateTimeOffset Before(DateTimeOffset now) => this switch
    {
        { MinutesAgo: { } minutes, DaysAgo: null, At: null } => now.AddMinutes(-minutes),
        { MinutesAgo: null, DaysAgo: { } days, At: { } at } =>
            new DateTimeOffset(now.Date.AddDays(-days) + at.ToTimeSpan(), now.Offset),
        _ => throw new InvalidOperationException($"{this} is no time: give minutesAgo, or daysAgo and at."),
    };
}
