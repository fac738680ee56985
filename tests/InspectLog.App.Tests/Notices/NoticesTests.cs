using System.IO.Enumeration;
using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using InspectLog.App.Garages;
using InspectLog.Tests;

namespace InspectLog.App.Tests.Notices;

/// <summary>THIRD-PARTY-NOTICES against what is really shipped, both ways.</summary>
public sealed partial class NoticesTests(PublishedProgram published) : IClassFixture<PublishedProgram>
{
    private static readonly IReadOnlyList<ThirdPartyWork> Works = ThirdPartyNotices.Works();

    /// <summary>Ours, and what is said about the works of others beside them.</summary>
    private static readonly string[] Own =
    [
        "inspectlog", "inspectlog.*", "InspectLog.*", "LICENSE", "THIRD-PARTY-NOTICES", "demo/*", "wwwroot/css/*", "wwwroot/js/*", "wwwroot/assets/*",
        "wwwroot/*.svg", "wwwroot/sw.js", "wwwroot/*.webmanifest", "*/README.md", "*/SHA256SUMS", "*/LICENSE-*.txt",
    ];

    [Theory]
    [InlineData("LICENSE")]
    [InlineData("THIRD-PARTY-NOTICES")]
    public void Licence_and_notices_lie_beside_the_built_and_the_published_program(string file)
    {
        var text = File.ReadAllText(Repository.PathOf(file));

        Assert.Equal(text, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file)));
        Assert.Equal(text, File.ReadAllText(Path.Combine(published.Folder, file)));
    }

    [Fact]
    public void Notices_the_program_reads_are_the_ones_beside_it() =>
        Assert.Equal(File.ReadAllText(Path.Combine(published.Folder, "THIRD-PARTY-NOTICES")), ThirdPartyNotices.Text());

    [Fact]
    public void Every_file_that_ships_is_ours_or_stands_in_the_notices() =>
        Assert.All(published.Files, file => Assert.Contains(Own.Concat(FilesOfOthers()), pattern => IsLike(pattern, file)));

    [Fact]
    public void Every_file_of_the_notices_ships() =>
        Assert.All(FilesOfOthers(), pattern => Assert.Contains(published.Files.Concat(BuiltIn()), file => IsLike(pattern, file)));

    [Fact]
    public void Every_file_built_in_is_ours_or_stands_in_the_notices() =>
        Assert.All(BuiltIn(), file => Assert.True(FilesOfOthers().Contains(file) || OwnBuiltIn().IsMatch(file), file));

    [Fact]
    public void Packages_of_the_notices_are_the_ones_the_program_is_built_from_with_their_versions() => Assert.Equal(
        ShippedPackages().Order(StringComparer.Ordinal),
        Works.Where(work => Package().IsMatch(work.From))
            .Select(work => $"{Package().Match(work.From).Groups[1].Value} {work.Version}")
            .Order(StringComparer.Ordinal));

    [Fact]
    public void Versions_of_scripts_and_models_are_those_of_their_files() => Assert.All(
        Works.Where(work => work.From.StartsWith("npm", StringComparison.Ordinal) || work.Name == "Silero VAD"),
        work => Assert.Contains(work.Version, Assert.Single(work.Files), StringComparison.Ordinal));

    [Fact]
    public void Licences_beside_the_files_are_in_the_notices_word_for_word()
    {
        var licences = new[] { "src/InspectLog.Dictation/model", "src/InspectLog.Dictation/pronunciation", "src/InspectLog.Paper/fonts", "wwwroot/vendor" }
            .SelectMany(folder => Directory.GetFiles(Repository.PathOf(folder), "LICENSE-*.txt"))
            .ToList();

        Assert.Equal(6, licences.Count);
        Assert.All(licences, file => Assert.Contains(Works, work => work.Text == File.ReadAllText(file).Trim()));
    }

    [Fact]
    public void Every_work_has_the_text_of_the_licence_it_names()
    {
        var begins = new Dictionary<string, string>
        {
            ["MIT"] = "Permission is hereby granted, free of charge",
            ["0BSD"] = "Permission to use, copy, modify, and/or distribute this software",
            ["Apache-2.0"] = "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
            ["Bitstream Vera"] = "Permission is hereby granted, free of charge",
            ["BSD-2-Clause with acknowledgement"] = "Redistribution and use in source and binary forms",
        };

        Assert.All(Works, work => Assert.Contains(begins[work.Licence], work.Text, StringComparison.Ordinal));
    }

    private static IEnumerable<string> FilesOfOthers() => Works.SelectMany(work => work.Files);

    private static bool IsLike(string pattern, string file) => FileSystemName.MatchesSimpleExpression(pattern, file, ignoreCase: false);

    /// <summary>Files built into our libraries, as <c>library!file</c>.</summary>
    private static IEnumerable<string> BuiltIn() =>
        from file in Directory.GetFiles(AppContext.BaseDirectory, "*.dll")
        let name = Path.GetFileName(file)
        where name == "inspectlog.dll" || (name.StartsWith("InspectLog.", StringComparison.Ordinal) && !name.EndsWith(".Tests.dll", StringComparison.Ordinal))
        from resource in Assembly.LoadFrom(file).GetManifestResourceNames()
        select $"{name}!{resource}";

    /// <summary>Packages that become part of the program, with versions, as its build resolved them: those that bring a
    /// library, and those that bring native ones by a build step.</summary>
    private static IEnumerable<string> ShippedPackages()
    {
        var assets = JsonDocument.Parse(File.ReadAllText(Repository.PathOf("src", "InspectLog.App", "obj", "project.assets.json")));
        return assets.RootElement.GetProperty("targets").EnumerateObject().First().Value.EnumerateObject()
            .Where(package => package.Value.GetProperty("type").GetString() == "package")
            .Where(package => package.Value.TryGetProperty("runtime", out var files) && files.EnumerateObject().Any(file => !IsLeftOut(file)) || package.Name.StartsWith("Whisper.net.Runtime", StringComparison.Ordinal))
            .Select(package => package.Name.Replace('/', ' '));
    }

    /// <summary>Stands for the files of a package that the project leaves out.</summary>
    private static bool IsLeftOut(JsonProperty file) => file.Name.EndsWith("/_._", StringComparison.Ordinal);

    [GeneratedRegex(@"^NuGet package (\S+)$")]
    private static partial Regex Package();

    [GeneratedRegex(@"!(Sheets/.*\.json|SHA256SUMS|THIRD-PARTY-NOTICES|english\.json|reader\.weights)$")]
    private static partial Regex OwnBuiltIn();
}
