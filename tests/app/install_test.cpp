#include "tests/app/program.h"

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

}  // namespace
}  // namespace quarterturn
