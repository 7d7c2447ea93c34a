// What another program changes while the window is open.

#include "tests/ui/shell/main_window_fixture.h"

namespace quarterturn {
namespace {

TEST_F(MainWindowTest, ShowsWhatAnotherProgramChanged) {
    show_active(window);
    const int before = screen(Moment::coming_up)->refreshed;
    Library other = Library::open(open.session.library().folder());
    other.clients().add(client_called("Ada Lindqvist"));
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return screen(Moment::coming_up)->refreshed > before; }, 20000));
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, before + 1);
    outside().look();
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, before + 1) << "nothing more has changed";
}

TEST_F(MainWindowTest, HerOwnChangesAreNoneOfAnotherProgram) {
    show_active(window);
    open.session.change_records(
        {"added one", [](Library& library) { library.clients().add(client_called("Ada")); }});
    const int before = screen(Moment::coming_up)->refreshed;
    outside().look();
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, before);
}

TEST_F(MainWindowTest, ChangesFromOutsideWaitWhileSheTypes) {
    show_active(window);
    auto* field = new QLineEdit(screen(Moment::coming_up));
    field->show();
    field->setFocus();
    QTest::keyClicks(field, QStringLiteral("Ada"));
    Library other = Library::open(open.session.library().folder());
    other.clients().add(client_called("Ada Lindqvist"));
    const int before = screen(Moment::coming_up)->refreshed;
    outside().look();
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, before);
    field->clearFocus();
    outside().look();
    EXPECT_EQ(screen(Moment::coming_up)->refreshed, before + 1);
}

}  // namespace
}  // namespace quarterturn
