using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Journal.Record;

/// <summary>Bodies to JSON and back, as FORMAT.md describes.</summary>
internal static class BodyJson
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,

        // The canonical order of members does not put the kind of a doubt first.
        AllowOutOfOrderMetadataProperties = true,
        Converters =
        {
            new JsonStringEnumConverter(new LowerCaseWords(), allowIntegerValues: false),
            new ReadingByShape(),
        },
        TypeInfoResolver = new DefaultJsonTypeInfoResolver
        {
            Modifiers = { LetAbsentMeanNull, WriteInfiniteDegreesOfFreedomAsNull },
        },
    };

    /// <summary>The canonical JSON of a body.</summary>
    /// <exception cref="ArgumentException">It holds a number that is not finite.</exception>
    public static byte[] Write(EntryBody body) =>
        CanonicalJson.Of(JsonSerializer.SerializeToUtf8Bytes(body, body.GetType(), Options));

    /// <summary>The body of a kind this program knows, or null: the kind or version is another program's, or the
    /// members are not the ones that kind has. A former version is given as the one that is written now.</summary>
    public static EntryBody? Read(string kind, int version, JsonElement body)
    {
        if (EntryKinds.Find(kind, version) is not { } type)
        {
            return null;
        }

        try
        {
            return Today((EntryBody?)body.Deserialize(type, Options));
        }
        catch (Exception)
        {
            // A record refuses what cannot be by an error of its own sort. Whoever wrote the entry, it costs only itself.
            return null;
        }
    }

    /// <summary>The same of a body as it is spelled; it is canonical JSON.</summary>
    public static EntryBody? Read(string kind, int version, ReadOnlySpan<byte> body)
    {
        if (EntryKinds.Find(kind, version) is not { } type)
        {
            return null;
        }

        try
        {
            return Today((EntryBody?)JsonSerializer.Deserialize(body, type, Options));
        }
        catch (Exception)
        {
            return null; // as above
        }
    }

    private static EntryBody? Today(EntryBody? read) => read is IFormerBody former ? former.Today() : read;

    private static void LetAbsentMeanNull(JsonTypeInfo type)
    {
        foreach (var member in type.Properties.Where(member => member.IsSetNullable))
        {
            member.IsRequired = false;
        }
    }

    private static void WriteInfiniteDegreesOfFreedomAsNull(JsonTypeInfo type)
    {
        if (type.Type == typeof(Contribution))
        {
            type.Properties.Single(member => member.Name == "degreesOfFreedom").CustomConverter = new InfinityAsNull();
        }
    }

    /// <summary>ConditionalPass becomes "conditional pass".</summary>
    private sealed class LowerCaseWords : JsonNamingPolicy
    {
        public override string ConvertName(string name) => KebabCaseLower.ConvertName(name).Replace('-', ' ');
    }

    private sealed class InfinityAsNull : JsonConverter<double>
    {
        public override bool HandleNull => true;

        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Null ? double.PositiveInfinity : reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
        {
            if (double.IsPositiveInfinity(value))
            {
                writer.WriteNullValue();
            }
            else
            {
                writer.WriteNumberValue(value);
            }
        }
    }

    /// <summary>A bracket is the reading that has "goes"; no type names in the journal.</summary>
    private sealed class ReadingByShape : JsonConverter<Reading>
    {
        public override Reading? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var element = JsonElement.ParseValue(ref reader);
            return element.ValueKind == JsonValueKind.Object && element.TryGetProperty("goes", out _)
                ? element.Deserialize<Bracket>(options)
                : element.Deserialize<DisplayedReading>(options);
        }

        public override void Write(Utf8JsonWriter writer, Reading value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value, value.GetType(), options);
    }
}
