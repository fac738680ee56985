using System.Diagnostics;

namespace InspectLog.Journal.Tests.Support;

/// <summary>An ext4 file system in a file, mounted. A copy of that file holds what had reached the disk in that moment and no
/// more, as after a power cut. Only root may mount one.</summary>
internal sealed class LoopDisk : IDisposable
{
    private readonly string _image;

    private LoopDisk(string image, string path) => (_image, Path) = (image, path);

    /// <summary>Where it is mounted.</summary>
    public string Path { get; }

    /// <summary>Makes an empty one.</summary>
    /// <param name="folder">Folder for the file and the mount.</param>
    public static LoopDisk Make(string folder)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Only root can mount a file system.");
        var image = System.IO.Path.Combine(folder, "disk");
        using (var file = File.Create(image))
        {
            file.SetLength(12 << 20);
        }

        Run("mkfs.ext4", "-q", "-F", image);
        return Mount(image, System.IO.Path.Combine(folder, "mounted"));
    }

    /// <summary>What a power cut in this moment would leave, mounted.</summary>
    public LoopDisk AfterPowerCut(string folder)
    {
        var copy = System.IO.Path.Combine(folder, "copy");
        File.Copy(_image, copy, overwrite: true);
        return Mount(copy, System.IO.Path.Combine(folder, "mounted-copy"));
    }

    public void Dispose() => Run("umount", Path);

    // The kernel's own time for writing back is put off, so that what is on the disk is there because somebody synced it.
    private static LoopDisk Mount(string image, string at)
    {
        Directory.CreateDirectory(at);
        Run("mount", "-o", "loop,commit=300", image, at);
        return new LoopDisk(image, at);
    }

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(program, arguments);
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode}");
    }
}
