using System.Diagnostics;
using System.Net;
using InspectLog.Journal.State;

namespace InspectLog.App.Tests.Web;

/// <summary>A disk that fills up while something is sent, on a small file system of its own.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public async Task Recording_that_does_not_fit_is_not_acknowledged_and_the_pages_say_so()
    {
        Assert.SkipUnless(Environment.UserName == "root", "Mounting a small file system needs root.");
        var folder = Directory.CreateTempSubdirectory("inspectlog-full-").FullName;
        Run("mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", folder);
        try
        {
            await using (var app = await TestApp.StartAsync(folder: folder))
            {
                var bench = await app.StartInspectionAsync();
                var before = app.Garage.Entries("marigold").Count;
                FillUp(Path.Combine(folder, "ballast"));

                using var recording = new ByteArrayContent(LongTone());
                var answer = await app.Client.PostAsync($"{bench}/recordings", recording, TestContext.Current.CancellationToken);

                Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
                Assert.Equal(before, app.Garage.Entries("marigold").Count);
                Assert.NotEmpty(app.Garage.Problems);
                Assert.Equal(
                    HttpStatusCode.OK,
                    (await app.Client.GetAsync(bench, TestContext.Current.CancellationToken)).StatusCode);
                File.Delete(Path.Combine(folder, "ballast"));
            }

            await using var again = await TestApp.StartAsync(folder: folder);
            await again.PostForRedirectAsync(
                "/vehicles/marigold/inspections/2/notes", ("text", "There is room again"));
            Assert.Single(again.Garage.FindVehicle("marigold")!.Inspections[0].Captures.OfType<TypedNote>());
        }
        finally
        {
            Run("umount", folder);
            Directory.Delete(folder);
        }
    }

    private static void FillUp(string path)
    {
        using var file = File.Create(path);
        var page = new byte[4096];
        try
        {
            while (true)
            {
                file.Write(page);
                file.Flush();
            }
        }
        catch (IOException)
        {
            // Full, which is what is wanted.
        }
    }

    private static byte[] LongTone() => Dictation.Hearing.WavFile.Write(
        new Dictation.Hearing.PcmAudio(new float[16_000 * 12]));

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
