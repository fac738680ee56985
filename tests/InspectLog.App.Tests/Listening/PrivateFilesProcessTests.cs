using System.Net.Http.Headers;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Listening;

/// <summary>What the program as a process of its own leaves on the disk: nothing that others can read, and nothing of an
/// upload that was broken off.</summary>
[Trait("Takes", "long")]
public sealed class PrivateFilesProcessTests : IDisposable
{
    private const UnixFileMode Others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute
        | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-private-");

    private string Data => Path.Combine(_folder.FullName, "garage");

    private string Uploads => Path.Combine(Data, "uploads");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    [System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
    public async Task New_files_and_folders_are_the_owners_alone_and_remains_of_uploads_go_at_the_next_start()
    {
        await using (var program = await StartAsync())
        {
            var bench = await program.StartInspectionAsync();
            using var half = new HalfPhoto();
            _ = program.Client.PostAsync($"{bench}/photos", half.Form, CancellationToken.None);
            await Eventually.GetAsync(() => Directory.GetFiles(Uploads).FirstOrDefault(file => new FileInfo(file).Length > 0));

            program.Kill();
            while (program.IsRunning)
            {
                await Task.Delay(20, TestContext.Current.CancellationToken);
            }
        }

        Assert.NotEmpty(Directory.GetFiles(Uploads));
        Assert.All(
            _folder.EnumerateFileSystemInfos("*", SearchOption.AllDirectories), one => Assert.True((one.UnixFileMode & Others) == 0, one.FullName));

        await using var again = await StartAsync();
        Assert.Empty(Directory.GetFiles(Uploads));
    }

    private Task<ServedProgram> StartAsync() =>
        ServedProgram.StartAsync(Data, "dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll")]);

    /// <summary>A photo of which the last half never comes.</summary>
    private sealed class HalfPhoto : IDisposable
    {
        public HalfPhoto()
        {
            var photo = new StreamContent(new StallingStream());
            photo.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");
            Form = new MultipartFormDataContent { { photo, "photo", "photo.jpg" } };
        }

        public MultipartFormDataContent Form { get; }

        public void Dispose() => Form.Dispose();
    }

    private sealed class StallingStream : MemoryStream
    {
        public StallingStream()
            : base(new byte[400_000])
        {
        }

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            if (Position == Length)
            {
                await Task.Delay(Timeout.Infinite, cancellationToken);
            }

            return await base.ReadAsync(buffer, cancellationToken);
        }
    }
}
