using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Files;

public sealed class JobFileTests : IDisposable
{
    private static readonly Project Job = NewProject.Blank(LengthUnit.Inches);

    private readonly string _folder = Directory.CreateTempSubdirectory("nook").FullName;

    private string Path => System.IO.Path.Combine(_folder, "bay.nook.json");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void What_is_saved_is_read_back()
    {
        Assert.Null(JobFile.Save(Job, Path));
        Assert.Equal(JobFile.Write(Job), JobFile.Write(JobFile.Read(Path).Value));
        Assert.Equal(["bay.nook.json"], FilesThere());
    }

    [Fact]
    public void The_version_before_is_kept_beside()
    {
        JobFile.Save(Job, Path);
        JobFile.Save(Job with { Name = "second" }, Path);
        JobFile.Save(Job with { Name = "third" }, Path);
        Assert.Equal(JobFile.Write(Job with { Name = "second" }), File.ReadAllText(AtomicFile.BackupOf(Path)));
        Assert.Equal("third", JobFile.Read(Path).Value.Name);
    }

    [Fact]
    public void Saving_what_is_there_already_leaves_the_version_before_where_it_is()
    {
        JobFile.Save(Job, Path);
        JobFile.Save(Job with { Name = "second" }, Path);
        JobFile.Save(Job with { Name = "second" }, Path);
        Assert.Equal(JobFile.Write(Job), File.ReadAllText(AtomicFile.BackupOf(Path)));
    }

    [Fact]
    public void A_save_that_fails_half_way_leaves_the_old_file_and_nothing_else()
    {
        JobFile.Save(Job, Path);
        Assert.Throws<IOException>(() =>
            AtomicFile.Replace(
                Path,
                stream =>
                {
                    stream.Write("{ \"format\": "u8);
                    stream.Flush();
                    throw new IOException("The disk is full.");
                }
            )
        );
        Assert.Equal(JobFile.Write(Job), File.ReadAllText(Path));
        Assert.Equal(["bay.nook.json"], FilesThere());
    }

    [Fact]
    public void Until_the_last_moment_the_old_file_is_whole()
    {
        JobFile.Save(Job, Path);
        AtomicFile.Replace(
            Path,
            stream =>
            {
                stream.Write("new"u8);
                Assert.Equal(JobFile.Write(Job), File.ReadAllText(Path));
            }
        );
        Assert.Equal("new", File.ReadAllText(Path));
    }

    [Fact]
    public void A_link_stays_a_link_and_the_file_behind_it_is_saved()
    {
        JobFile.Save(Job, Path);
        var link = System.IO.Path.Combine(_folder, "link.nook.json");
        File.CreateSymbolicLink(link, Path);
        Assert.Null(JobFile.Save(Job with { Name = "through the link" }, link));
        Assert.NotNull(new FileInfo(link).LinkTarget);
        Assert.Equal("through the link", JobFile.Read(Path).Value.Name);
    }

    [Fact]
    public void A_document_that_could_not_be_opened_again_is_not_saved()
    {
        JobFile.Save(Job, Path);
        var refusal = JobFile.Save(Job with { Pieces = [new Doors { Id = "d", Box = "gone" }] }, Path)!;
        Assert.Equal(
            $"{Path}: pieces/d/box: Not saved, for it could not be opened again. There is no piece \"gone\": add it to "
                + "pieces, or name one that is there.",
            refusal.ToString()
        );
        Assert.Equal(JobFile.Write(Job), File.ReadAllText(Path));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_said()
    {
        var nowhere = System.IO.Path.Combine(_folder, "none", "bay.nook.json");
        Assert.Equal(
            $"{nowhere}: Not saved. There is no such folder: check the path.",
            JobFile.Save(Job, nowhere)!.ToString()
        );
        Assert.Equal(
            $"{_folder}: Not saved. This is a folder: name the job file in it, NAME.nook.json.",
            JobFile.Save(Job, _folder)!.ToString()
        );
        Assert.Empty(FilesThere());
    }

    [Fact]
    public void A_file_that_is_not_there_a_folder_and_a_picture_are_said()
    {
        Assert.Equal(
            $"{Path}: There is no such file: check the name, or make a job with \"nookwright new\".",
            JobFile.Read(Path).Refusal.ToString()
        );
        Assert.Equal(
            $"{_folder}: This is a folder: name the job file in it, NAME.nook.json.",
            JobFile.Read(_folder).Refusal.ToString()
        );
        File.WriteAllBytes(Path, [0x89, 0x50, 0x4e, 0x47, 0xff, 0xd8]);
        Assert.Equal(
            $"{Path}: This is not text in UTF-8: save it as UTF-8, or name another file.",
            JobFile.Read(Path).Refusal.ToString()
        );
    }

    [Fact]
    public void A_file_larger_than_any_job_is_not_read()
    {
        using (var stream = File.Create(Path))
            stream.SetLength(JobFile.MostBytes + 1);
        Assert.Equal(
            $"{Path}: This file has 16777217 bytes, and no job needs more than 16777216: is it a job?",
            JobFile.Read(Path).Refusal.ToString()
        );
    }

    [Fact]
    public void A_file_that_is_refused_is_left_as_it_was()
    {
        File.WriteAllText(Path, "{ \"format\": \"nookwright-job\", \"version\": 9 }");
        var (before, written) = (File.ReadAllText(Path), File.GetLastWriteTimeUtc(Path));
        Assert.False(JobFile.Read(Path).Ok);
        Assert.Equal((before, written), (File.ReadAllText(Path), File.GetLastWriteTimeUtc(Path)));
        Assert.Equal(["bay.nook.json"], FilesThere());
    }

    private IEnumerable<string?> FilesThere() => Directory.GetFiles(_folder).Select(System.IO.Path.GetFileName);
}
