#include "ui/all_photos/all_photos_screen.h"

#include <QItemSelectionModel>
#include <QLineEdit>
#include <QLocale>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <utility>

#include "indexer/store/first_found.h"
#include "ui/all_photos/bin_part.h"
#include "ui/all_photos/later_found.h"
#include "ui/all_photos/photo_shelves.h"
#include "ui/all_photos/search_choices.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/empty_page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int pause_in_typing_ms = 150;  // common practice
constexpr int photos_at_once = 600;      // several screens full; the others come a moment later
constexpr int widest_field_steps = 120;

}  // namespace

AllPhotosScreen::AllPhotosScreen(Session& session)
    : session_(session),
      photos_(session),
      later_(new LaterFound(session, this)),
      typing_(new QTimer(this)) {
    typing_->setSingleShot(true);
    typing_->setInterval(pause_in_typing_ms);
    connect(typing_, &QTimer::timeout, this, &AllPhotosScreen::look_again);
    connect(later_, &LaterFound::found, this,
            [this](const std::vector<FoundPhoto>& found) { show_found(found, true); });
    connect(later_, &LaterFound::failed, &session_, &Session::say);
    build();
    add_keys();
}

void AllPhotosScreen::build() {
    pages_ = new QStackedWidget;
    auto* empty = new EmptyPage(tr("Here all photos of the library stand, the newest first, and "
                                   "search for any of them by words. There are none yet."),
                                tr("Bring photos in"));
    connect(empty, &EmptyPage::started, this,
            [this] { session_.go_to({.moment = Moment::bringing_in}); });
    empty_ = empty;
    searching_ = new QWidget;
    auto* column = new QVBoxLayout(searching_);
    column->setContentsMargins(0, space(4), 0, 0);
    column->setSpacing(space(3));
    column->addWidget(build_header());
    results_ = new QStackedWidget;
    shelves_ = new PhotoShelves(session_, photos_);
    connect(shelves_, &PhotoShelves::opened, this, &AllPhotosScreen::open);
    connect(shelves_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &AllPhotosScreen::show_bin);
    results_->addWidget(shelves_);
    column->addWidget(results_, 1);
    column->addLayout(build_foot());
    pages_->addWidget(empty_);
    pages_->addWidget(searching_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
}

QWidget* AllPhotosScreen::build_header() {
    auto* header = new QWidget;
    auto* column = new QVBoxLayout(header);
    column->setContentsMargins(space(8), 0, space(8), 0);
    column->setSpacing(space(2));
    words_ = new QLineEdit;
    words_->setPlaceholderText(tr("Search names, notes and recipes"));
    words_->setAccessibleName(tr("Search names, notes and recipes"));
    words_->setMaximumWidth(space(widest_field_steps));
    connect(words_, &QLineEdit::textChanged, typing_, qOverload<>(&QTimer::start));
    connect(words_, &QLineEdit::returnPressed, this, [this] {
        look_again();
        if (photos_.rowCount() > 0) shelves_->setFocus();
    });
    count_ = make_quiet({});
    QHBoxLayout* row = make_row(4);
    row->addWidget(words_, 2);
    row->addWidget(count_, 1);
    choices_ = new SearchChoices(session_);
    connect(choices_, &SearchChoices::changed, this, &AllPhotosScreen::look_again);
    column->addLayout(row);
    column->addWidget(choices_);
    return header;
}

// Below the photos, so that they stay where they are when one is chosen.
QLayout* AllPhotosScreen::build_foot() {
    bin_ = new BinPart(session_);
    connect(bin_, &BinPart::move_asked, this, &AllPhotosScreen::move_chosen);
    QVBoxLayout* foot = make_column();
    foot->setContentsMargins(space(8), 0, space(8), space(2));
    foot->addWidget(bin_);
    return foot;
}

void AllPhotosScreen::add_keys() {
    const auto add = [this](const QKeySequence& key, auto act) {
        auto* shortcut = new QShortcut(key, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    const auto type = [this] {
        words_->setFocus(Qt::ShortcutFocusReason);
        words_->selectAll();
    };
    add(QKeySequence::Find, type);
    add(Qt::Key_Slash, type);
    add(Qt::Key_Delete, [this] {
        if (!search().binned) move_chosen();
    });
    add(Qt::Key_Escape, [this] { show_all(); });
}

QString AllPhotosScreen::help() const {
    return tr(
        "Type words from a name, a note or a recipe; beginnings of words will do. The buttons "
        "below show only some photos; press a chosen word to take it away.\n\n"
        "/ or Ctrl+F: to the search field\n"
        "Arrow keys, Page Up, Page Down, Home, End: through the photos\n"
        "Enter: open the photo, going round the head\n"
        "Delete: put the photo into the bin, where it stays for 30 days and then goes for good. "
        "“In the bin” shows what lies there; Enter takes a photo out again, as it was.\n"
        "Escape: all photos again");
}

void AllPhotosScreen::arrive(const Place& place) {
    if (place.photo) {
        look_for_all();
        const int position = photos_.position_of(*place.photo);
        if (position >= 0) shelves_->setCurrentIndex(photos_.index(position));
    }
}

PhotoSearch AllPhotosScreen::search() const {
    PhotoSearch search = choices_->chosen();
    search.words = to_utf8(words_->text().simplified());
    return search;
}

void AllPhotosScreen::refresh() {
    choices_->refresh();
    // Where she has scrolled to stays.
    shelves_->verticalScrollBar()->value() > 0 ? look_for_all() : look_again();
}

void AllPhotosScreen::look_again() {
    typing_->stop();
    later_->forget();
    session_.attempt([this] {
        const auto found = first_found(session_.library().database(), search(), photos_at_once);
        show_found(found.photos, found.all);
        if (!found.all) later_->look_for(search());
    });
}

void AllPhotosScreen::look_for_all() {
    typing_->stop();
    later_->forget();
    session_.attempt([this] { show_found(session_.library().search().find(search()), true); });
}

void AllPhotosScreen::show_found(const std::vector<FoundPhoto>& found, bool all) {
    const QModelIndex before = shelves_->currentIndex();
    const PhotoId current = before.isValid() ? photos_.id(before.row()) : PhotoId{};
    const PhotoSearch asked = search();
    const bool is_new = std::exchange(shown_, asked) != asked;
    const int scrolled_to = is_new ? 0 : shelves_->verticalScrollBar()->value();
    photos_.show(found, asked.words);
    const bool none_at_all =
        found.empty() && asked == PhotoSearch{} && session_.library().bin().all().empty();
    pages_->setCurrentWidget(none_at_all ? empty_ : searching_);
    if (none_at_all) return;
    count_->setText(count_words(static_cast<int>(found.size()), all));
    show_bin();
    if (found.empty()) {
        show_nothing_found();
        return;
    }
    results_->setCurrentWidget(shelves_);
    if (all && asked == PhotoSearch{} && found.front().moment) {
        const auto oldest = std::ranges::find_if(
            found.rbegin(), found.rend(), [](auto& photo) { return photo.moment.has_value(); });
        choices_->suggest_days(date_of(*oldest->moment), date_of(*found.front().moment));
    }
    shelves_->verticalScrollBar()->setValue(scrolled_to);
    const int position = current ? photos_.position_of(current) : -1;
    // What is chosen can be put into the bin: nothing out of sight, by a search for something else.
    if (position < 0 || (is_new && !shelves_->shows(position))) return;
    shelves_->setCurrentIndex(photos_.index(position));
    shelves_->verticalScrollBar()->setValue(scrolled_to);
}

void AllPhotosScreen::show_bin() {
    const QModelIndex current = shelves_->currentIndex();
    const bool any = current.isValid() && photos_.rowCount() > 0;
    session_.attempt([&] {
        bin_->show_bin(search().binned,
                       any ? std::optional(photos_.id(current.row())) : std::nullopt);
    });
}

void AllPhotosScreen::move_chosen() {
    const int row = shelves_->currentIndex().row();
    bin_->move_chosen();
    const int last = photos_.rowCount() - 1;
    if (row >= 0 && last >= 0 && !shelves_->currentIndex().isValid()) {
        shelves_->setCurrentIndex(photos_.index(std::min(row, last)));
    }
    shelves_->setFocus();
}

QString AllPhotosScreen::nothing_found_words() const {
    if (search() == PhotoSearch{}) return tr("All photos of the library lie in the bin.");
    if (search() == PhotoSearch{.binned = true}) return tr("The bin is empty.");
    QStringList looked_for = choices_->in_words();
    const QString words = words_->text().simplified();
    //: words in the search field, among what was looked for
    if (!words.isEmpty()) looked_for.prepend(tr("“%1”").arg(isolated(words)));
    //: what was looked for, such as “leaf comb”, after
    return tr("No photo was found for %1.").arg(looked_for.join(QStringLiteral(", ")));
}

void AllPhotosScreen::show_nothing_found() {
    auto* nothing = new EmptyPage(nothing_found_words(), tr("Show all photos"));
    connect(nothing, &EmptyPage::started, this, &AllPhotosScreen::show_all);
    if (nothing_) {
        results_->removeWidget(nothing_);
        nothing_->deleteLater();
    }
    nothing_ = nothing;
    results_->addWidget(nothing);
    results_->setCurrentWidget(nothing);
}

QString AllPhotosScreen::count_words(int count, bool all) const {
    if (!all) return tr("Newest first");
    const QString number = QLocale().toString(count);
    if (count == 0) return tr("Nothing found");
    if (search() == PhotoSearch{}) {
        return count == 1 ? tr("1 photo") : tr("%1 photos; newest first").arg(number);
    }
    return count == 1 ? tr("1 photo found") : tr("%1 photos found; newest first").arg(number);
}

void AllPhotosScreen::show_all() {
    words_->clear();
    choices_->clear();
    look_again();
    words_->setFocus(Qt::OtherFocusReason);
}

void AllPhotosScreen::open(PhotoId photo) {
    if (search().binned) return move_chosen();
    session_.attempt([&] {
        const auto record = session_.library().photos().find(photo);
        if (!record) return;
        const Tags& tags = record->tags;
        const bool lies_nowhere = !tags.look && !tags.sitting;
        session_.go_to({.moment = lies_nowhere ? Moment::bringing_in : Moment::round_the_head,
                        .sitting = tags.sitting,
                        .look = tags.look,
                        .photo = photo});
    });
}

}  // namespace quarterturn
