using InspectLog.Photos.Developing;

namespace InspectLog.Photos.Worker;

/// <summary>The worker's side: takes photos from its parent, one at a time, and answers with copies and figures.</summary>
/// <remarks>Nothing else may write to the stream out, so a worker must not print to its standard output.</remarks>
public static class PhotoWorkerServer
{
    /// <summary>Serves over this process's standard input and output until the parent closes its end.</summary>
    public static async Task RunAsync()
    {
        await using var fromParent = Console.OpenStandardInput();
        await using var toParent = Console.OpenStandardOutput();
        await RunAsync(fromParent, toParent, PhotoDeveloper.Develop);
    }

    /// <summary>Serves until the stream in ends, also in the middle of a photo: one that never ends does not keep the
    /// worker once its parent is gone.</summary>
    /// <param name="fromParent">Photos.</param>
    /// <param name="toParent">Answers.</param>
    /// <param name="develop">Develops a photo.</param>
    /// <exception cref="InvalidDataException">The stream in does not hold the parent's frames.</exception>
    public static async Task RunAsync(
        Stream fromParent, Stream toParent, Func<PhotoWork, ReadOnlyMemory<byte>, PhotoAnswer> develop)
    {
        try
        {
            await new PhotoFrame(PhotoMessage.Ready, default).WriteAsync(toParent);
            var next = PhotoFrame.ReadAsync(fromParent);
            while (await next is { } question)
            {
                var answer = Task.Run(() => develop(question.Work, question.Body));
                next = PhotoFrame.ReadAsync(fromParent);
                if (await Task.WhenAny(answer, next) == next && !answer.IsCompleted)
                    return;
                foreach (var frame in PhotoFrame.Of(await answer))
                    await frame.WriteAsync(toParent);

                // What one photo left is given back while nobody waits, so that a worker has the memory of one photo.
                GC.Collect();
            }
        }
        catch (IOException)
        {
            // The parent is gone.
        }
    }
}
