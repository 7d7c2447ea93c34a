// Her whole main job in the real window, by keys alone, on the demo photos: from bringing them in
// to the sheet. pdftotext is Poppler's. What the photos show is taken from the demo's own truth.

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include "app/quarterturn/screens.h"
#include "indexer/intake/import.h"
#include "indexer/intake/scenario.h"
#include "indexer/intake/sort.h"
#include "indexer/looks/look_state.h"
#include "indexer/worker/confined.h"
#include "tests/support/command.h"
#include "tests/support/demo_truth.h"
#include "tests/support/no_network.h"
#include "tests/support/temporary_folder.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/contact_sheet/contact_sheet_screen.h"
#include "ui/shell/main_window.h"
#include "ui/shell/moment_button.h"
#include "ui/shell/session.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

const std::filesystem::path demo = QUARTERTURN_DEMO_PHOTOS;

struct WithoutNetwork : testing::Environment {
    void SetUp() override { end_at_the_first_network_socket(); }
};
const auto* const without_network = testing::AddGlobalTestEnvironment(new WithoutNetwork);

struct Key {
    Qt::Key key;
    Qt::KeyboardModifiers modifiers = Qt::NoModifier;
};

Key key_for(Angle angle) {
    switch (angle) {
        case Angle::front:
            return {Qt::Key_Up};
        case Angle::back:
            return {Qt::Key_Down};
        case Angle::left:
            return {Qt::Key_Left};
        case Angle::right:
            return {Qt::Key_Right};
        case Angle::left_three_quarter:
            return {Qt::Key_Left, Qt::ShiftModifier};
        case Angle::right_three_quarter:
            return {Qt::Key_Right, Qt::ShiftModifier};
        case Angle::crown:
            return {Qt::Key_Up, Qt::ShiftModifier};
        case Angle::detail:
            return {Qt::Key_Down, Qt::ShiftModifier};
    }
    return {};
}

class MainJobTest : public testing::Test {
  protected:
    MainJobTest() {
        session.create(folder / "library");
        Library& library = session.library();
        load_scenario(library, text_of(demo / "scenario.json"), at_noon);
        import_photos(library, *decoder, {.sources = {demo / "photos"}});
        sort_by_time(library);
        for (const ClockShift& shift : propose_clock_shifts(library)) {
            apply_clock_shift(library, shift);
        }
        look = library.looks().named("Low twisted bun, leaf comb").front();
        for (const CsvRow& row : demo_truth()) {
            truth[Path(row.at("file")).filename().string()] = row;
        }
        window.resize(1280, 800);
        show_active(window);
    }

    void press(Key key) {
        QTest::keyClick(window.windowHandle(), key.key, key.modifiers);
        show_active(window);
    }

    template <class Button>
    void press_button(const QString& text) {
        for (auto* button : window.findChildren<Button*>()) {
            if (!button->isVisible() || button->text() != text) continue;
            button->setFocus();
            press({Qt::Key_Space});
            return;
        }
        FAIL() << "there is no button " << text.toStdString();
    }

    // As a screen reader would tell it.
    std::optional<Photo> in_hand() {
        for (const auto* tile : window.findChildren<PhotoTile*>()) {
            if (tile->isVisible() &&
                tile->accessibleName().startsWith(QStringLiteral("The photo in hand"))) {
                return session.library().photos().find(tile->photo());
            }
        }
        return std::nullopt;
    }

    bool waits() {
        for (const auto* label : window.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text() == QStringLiteral("Every photo has its place."))
                return false;
        }
        return true;
    }

    void say_stage(Stage stage) {
        const std::map<Stage, Qt::Key> keys{
            {Stage::before, Qt::Key_B}, {Stage::during, Qt::Key_D}, {Stage::after, Qt::Key_A}};
        const QString name = QString::fromStdString(std::string(word(stage)));
        for (const auto* button : window.findChildren<QPushButton*>()) {
            if (!button->isVisible() || !button->isCheckable() || !button->isChecked()) continue;
            if (button->text().startsWith(name, Qt::CaseInsensitive)) return;
        }
        ++further_keys;
        press({keys.at(stage)});
    }

    // Places what is in hand as the truth says; answers false for a photo of the other look.
    bool place(const Photo& photo) {
        const CsvRow& row = truth.at(photo.file.name);
        if (row.at("look") == "a-evening" && row.at("stage") != "before") return false;
        say_stage(parse_stage(row.at("stage")).value());
        if ((row.at("mirrored") == "1") != photo.tags.mirrored) press({Qt::Key_M});
        ++placing_keys;
        press(key_for(parse_angle(row.at("angle")).value()));
        return true;
    }

    static constexpr auto at_noon = LocalTime(std::chrono::hours(12) + std::chrono::days(20764));

    TemporaryFolder folder;
    std::unique_ptr<Decoder> decoder = make_confined_decoder();
    Session session{real_file_system(), *decoder, [] { return at_noon; }};
    MainWindow window{session, all_screens(), [](Session&) { return new QWidget; }};
    Look look;
    std::map<std::string, CsvRow> truth;
    int placing_keys = 0;
    int further_keys = 0;
};

TEST_F(MainJobTest, PlacesSignsOffAndSavesTheSheetByKeys) {
    window.go_to({.moment = Moment::round_the_head, .look = look.id});
    show_active(window);
    int others = 0;
    std::set<PhotoId> met;
    while (waits() && others <= 8) {
        const auto photo = in_hand();
        ASSERT_TRUE(photo);
        if (!place(*photo)) {
            ++others;
            press({Qt::Key_Period});
            continue;
        }
        ASSERT_TRUE(met.insert(photo->id).second) << photo->file.name << " does not leave the hand";
    }
    LookState state = look_state(session.library(), look.id);
    EXPECT_TRUE(state.coverage.complete) << state.coverage.next_shot;
    EXPECT_GE(static_cast<int>(state.photos.size()), 24);
    EXPECT_LE(placing_keys, static_cast<int>(state.photos.size()));
    EXPECT_LE(further_keys, 6) << "stages are suggested, so that they need hardly a key";

    press_button<MomentButton>(QStringLiteral("Sign-off"));
    press_button<QPushButton>(QStringLiteral("Sign it off"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return session.library().sign_offs().standing(look.id).has_value(); }, 20000));
    state = look_state(session.library(), look.id);
    EXPECT_EQ(state.sign_off->seal.photos.size(), state.photos.size());
    QApplication::processEvents();

    window.go_to({.moment = Moment::contact_sheet, .look = look.id});
    auto* sheet = static_cast<ContactSheetScreen*>(window.screen(Moment::contact_sheet));
    const auto ready = [&] {
        for (const auto* button : sheet->findChildren<QPushButton*>()) {
            if (button->text() == QStringLiteral("Print…")) return button->isEnabled();
        }
        return false;
    };
    ASSERT_TRUE(QTest::qWaitFor(ready, 60000));
    const Path file = folder / "sheet.pdf";
    sheet->save_to(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(file); }, 60000));
    const std::string text = output_of("pdftotext -layout " + file.string() + " -");
    for (const char* words : {"Low twisted bun, leaf comb", "Séraphine Vašnovič", "Signed off"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " in\n" << text;
    }
}

}  // namespace
}  // namespace quarterturn
