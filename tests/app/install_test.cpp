#include "tests/app/program.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

// What a packager does: install under a prefix of any name, and run from there.
TEST(Install, PutsProgramManPageAndCompletionUnderThePrefix) {
    const TemporaryFolder folder;
    const auto prefix = folder / "any prefix";
    output_of("cmake --install " + shell_word(QUARTERTURN_BUILD) + " --prefix " +
              shell_word(prefix));
    EXPECT_EQ(output_of(shell_word(prefix / "bin/qturn") + " version"),
              "qturn " QUARTERTURN_PROJECT_VERSION "\n");
    EXPECT_NE(output_of("mandoc " + shell_word(prefix / "share/man/man1/qturn.1")).find("qturn"),
              std::string::npos);
    const auto completion = prefix / "share/bash-completion/completions/qturn";
    EXPECT_EQ(output_of("bash -c " +
                        shell_word("source " + shell_word(completion) + "; complete -p qturn")),
              "complete -o default -F _qturn qturn\n");
}

// desktop-file-validate (freedesktop.org's desktop entry specification 1.5) and appstreamcli
// (AppStream) both fail on what a desktop could not use.
TEST(Install, PutsTheWindowWhereADesktopFindsIt) {
    const TemporaryFolder folder;
    output_of("cmake --install " + shell_word(QUARTERTURN_BUILD) + " --prefix " +
              shell_word(folder / "any prefix"));
    const auto share = folder / "any prefix" / "share";
    const auto entry = share / "applications/quarterturn.desktop";
    EXPECT_EQ(output_of("desktop-file-validate " + shell_word(entry)), "");
    output_of("appstreamcli validate --no-net " +
              shell_word(share / "metainfo/quarterturn.metainfo.xml"));
    EXPECT_NE(text_of(entry).find("Icon=quarterturn\n"), std::string::npos);
    EXPECT_NE(output_of("file --brief " +
                        shell_word(share / "icons/hicolor/scalable/apps/quarterturn.svg"))
                  .find("SVG"),
              std::string::npos);
    EXPECT_EQ(output_of("QT_QPA_PLATFORM=offscreen " +
                        shell_word(folder / "any prefix/bin/quarterturn") + " --version"),
              "quarterturn " QUARTERTURN_PROJECT_VERSION "\n");
    EXPECT_TRUE(std::filesystem::exists(share / "quarterturn/demo_photos/scenario.json"));
}

TEST(Window, SaysWithoutADisplayWhatItIsAndWhyNoWindowOpens) {
    const std::string start =
        "env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM " +
        shell_word(std::filesystem::path(QUARTERTURN_BUILD) / "app/quarterturn/quarterturn");
    EXPECT_EQ(output_of(start + " --version"), "quarterturn " QUARTERTURN_PROJECT_VERSION "\n");
    EXPECT_NE(output_of(start + " --help").find("--library"), std::string::npos);
    EXPECT_EQ(output_of(start + " 2>&1; echo $?"),
              "quarterturn: no window can be opened, since there is no display here or it cannot "
              "be reached: start it from a desktop, or use qturn, which needs none.\n2\n");
}

TEST(Install, PutsWhatOpensPhotosWhereTheProgramsFindIt) {
    const TemporaryFolder folder;
    output_of("cmake --install " + shell_word(QUARTERTURN_BUILD) + " --prefix " +
              shell_word(folder / "any prefix"));
    const auto prefix = folder / "any prefix";
    const auto qturn = [&](const std::string& words) {
        return output_of(shell_word(prefix / "bin/qturn") + " " + words + " --library " +
                         shell_word(folder / "library") + " 2>&1; echo $?");
    };
    write_bytes(folder / "photo.jpg", encoded(four_quarters(640, 480), ".jpg"));
    const std::string import = "import " + shell_word(folder / "photo.jpg");
    qturn("init");
    const auto decoder = prefix / "libexec/quarterturn/quarterturn-decoder";
    std::filesystem::rename(decoder, folder / "put away");
    const std::string without = qturn(import);
    EXPECT_NE(without.find(decoder.string()), std::string::npos) << without;
    EXPECT_TRUE(without.ends_with("\n1\n")) << without;
    EXPECT_NE(qturn("photos --json").find("[]"), std::string::npos);
    std::filesystem::rename(folder / "put away", decoder);
    EXPECT_TRUE(qturn(import).ends_with("\n0\n"));
    EXPECT_NE(qturn("photos --json").find("photo.jpg"), std::string::npos);
}

}  // namespace
}  // namespace quarterturn
