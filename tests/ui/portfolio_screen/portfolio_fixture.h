#pragma once
// The portfolio over a library with three finished photos: one that may go on a website, one whose
// photographer is not recorded, one of somebody who was not asked.

#include <QPushButton>

#include "indexer/image/encode.h"
#include "indexer/looks/consents.h"
#include "indexer/store/library_settings.h"
#include "tests/support/files.h"
#include "tests/support/test_pictures.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/asks_screen.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/portfolio_screen/candidate_shelves.h"
#include "ui/portfolio_screen/portfolio_screen.h"
#include "ui/portfolio_screen/selection_strip.h"

namespace quarterturn {

class PortfolioScreenTest : public testing::Test, protected AsksScreen {
  protected:
    PortfolioScreenTest() {
        QObject::connect(&session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        QObject::connect(&session, &Session::asked_for, &screen,
                         [this](const Place& place) { went_to = place; });
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
        wait();
    }

    bool fill() {
        example.library.settings().set(business_name_setting, "Pins and Paper");
        const ClientId ada = example.library.clients().add(client_called("Ada Vale"));
        Look plait;
        plait.client = ada;
        plait.name = "loose plait";
        const LookId other = example.library.looks().add(plait);
        example.library.look_facts().say(example.look, Fact::family,
                                         std::vector<std::string>{"low bun"});
        grant(example.mira, Use::website);
        back = add("back.jpg", example.look, Angle::back);
        left = add("left.jpg", example.look, Angle::left);
        ada_left = add("ada.jpg", other, Angle::left);
        example.library.credits().set(std::array{back, ada_left}, Credit{});
        return true;
    }

    void grant(ClientId client, Use use) {
        ConsentEntry entry;
        entry.client = client;
        entry.said = ConsentSaid::granted;
        entry.shown = ShownAs::with_her_face;
        entry.said_on = parse_date("2026-11-01").value();
        entry.until = parse_date("2026-12-01").value();
        entry.recorded_at = at("2026-11-01T08:00");
        record_consent(example.library, entry, std::array{use});
    }

    PhotoId add(const std::string& name, LookId look, Angle angle) {
        cv::Mat picture = four_quarters(300, 400);
        picture.rowRange(0, 16 * ++made).setTo(cv::Scalar(40, 90, 160));  // none is another's copy
        const Bytes bytes = jpeg_bytes(picture, 90);
        Photo photo = example_photo(name, taken_at("2026-11-01T11:00:00"));
        photo.file.sha256 = sha256(bytes);
        photo.file.bytes = static_cast<std::int64_t>(bytes.size());
        photo.tags.look = look;
        photo.tags.stage = Stage::after;
        photo.tags.angle = angle;
        const Path to = example.library.photo_file(photo);
        std::filesystem::create_directories(to.parent_path());
        write_bytes(to, bytes);
        return example.library.photos().add(photo);
    }

    void wait() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return session.work() == nullptr; }, 20000));
    }

    QWidget& asked() override { return screen; }
    Library& library() { return session.library(); }
    CandidateShelves& shelves() { return *screen.findChild<CandidateShelves*>(); }
    SelectionStrip& strip() { return *screen.findChild<SelectionStrip*>(); }
    std::vector<PhotoId> kept(const std::string& name) {
        const auto selection = library().selections().find(name);
        return selection ? selection->photos : std::vector<PhotoId>{};
    }

    int position_of(PhotoId photo) {
        return static_cast<ShownCandidates*>(shelves().model())->position_of(photo);
    }
    void look_at(PhotoId photo) {
        shelves().setFocus();
        shelves().setCurrentIndex(shelves().model()->index(position_of(photo), 0));
        QCoreApplication::processEvents();  // what has come is shown
    }
    void choose(PhotoId photo) {
        look_at(photo);
        QTest::keyClick(&shelves(), Qt::Key_Return);
        wait();
    }

    void press(const QString& name) {
        AsksScreen::press(name);
        wait();
        QCoreApplication::processEvents();
    }

    ExampleLibrary example;
    int made = 0;
    PhotoId back;
    PhotoId left;
    PhotoId ada_left;
    const bool filled = fill();
    std::unique_ptr<Decoder> decoder = make_local_decoder();
    Session session{real_file_system(), *decoder, [] { return at("2026-11-07T08:00:00"); }};
    const QString problem = session.open(example.folder / "library");
    PortfolioScreen screen{session};
    std::optional<Place> went_to;
};

}  // namespace quarterturn
