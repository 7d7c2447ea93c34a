#include "ui/bringing_in/source_choice.h"

#include <QFileDialog>
#include <QPainter>
#include <QStandardPaths>

#include "ui/bringing_in/card_finder.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString pictures_folder() {
    return QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
}

QString card_name(const Path& card) {
    return from_utf8(card.filename().native());
}

QString names_of(const std::vector<Path>& sources) {
    const QString first = card_name(sources.front());
    const int others = static_cast<int>(sources.size()) - 1;
    //: a card, and how many others
    return others == 0 ? first : SourceChoice::tr("%1 and %n more", nullptr, others).arg(first);
}

QString paths_of(const std::vector<Path>& sources) {
    QStringList paths;
    for (const Path& source : sources) paths << from_utf8(source.native());
    return paths.join(u'\n');
}

}  // namespace

SourceChoice::SourceChoice(CardFinder& finder, QWidget* parent)
    : QFrame(parent),
      begun_(make_column(2)),
      folder_(make_next_button(tr("Choose a folder…"))),
      cards_(make_column(2)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(8), space(8), space(8), space(8));
    column->setSpacing(space(3));
    column->addLayout(begun_);
    column->addWidget(make_heading(tr("Drop a folder, a card or photos here")));
    column->addWidget(
        make_quiet(tr("You see what is there before anything is copied. The originals are only "
                      "read.")));
    QPushButton* files = make_button(tr("Choose photos…"));
    connect(folder_, &QPushButton::clicked, this, &SourceChoice::choose_folder);
    connect(files, &QPushButton::clicked, this, &SourceChoice::choose_files);
    QHBoxLayout* row = make_row(2);
    row->addWidget(folder_);
    row->addWidget(files);
    row->addStretch();
    column->addLayout(row);
    column->addLayout(cards_);
    connect(&finder, &CardFinder::found, this, &SourceChoice::show_cards);
    show_cards(finder.cards());
    setFocusProxy(folder_);
}

void SourceChoice::offer_to_go_on(const std::vector<Path>& sources) {
    if (sources == offered_) return;
    offered_ = sources;
    empty_layout(begun_);
    // What is next is to go on.
    show_kind(*folder_, sources.empty() ? QStringLiteral("next") : QString());
    if (sources.empty()) return;
    begun_->addWidget(
        make_text(tr("Bringing photos in was not finished. What came in is whole and kept.")));
    QPushButton* go_on = make_next_button(tr("Go on with %1").arg(names_of(sources)));
    go_on->setToolTip(paths_of(sources));
    connect(go_on, &QPushButton::clicked, this, [this, sources] { emit chosen(sources); });
    QPushButton* leave = make_quiet_button(tr("Leave it at that"));
    connect(leave, &QPushButton::clicked, this, &SourceChoice::left_alone);
    QHBoxLayout* row = make_row(2);
    row->addWidget(go_on);
    row->addWidget(leave);
    row->addStretch();
    begun_->addLayout(row);
}

void SourceChoice::show_cards(const std::vector<Path>& cards) {
    empty_layout(cards_);
    for (const Path& card : cards) {
        //: a card or phone that is connected
        QPushButton* look = make_button(tr("Look at %1").arg(card_name(card)));
        look->setToolTip(from_utf8(card.native()));
        connect(look, &QPushButton::clicked, this, [this, card] { emit chosen({card}); });
        QHBoxLayout* row = make_row(2);
        row->addWidget(look);
        row->addWidget(make_quiet(tr("A card or phone is connected.")), 1);
        cards_->addLayout(row);
    }
}

void SourceChoice::choose_folder() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Folder with photos"), pictures_folder());
    if (!folder.isEmpty()) emit chosen({Path(to_utf8(folder))});
}

void SourceChoice::choose_files() {
    std::vector<Path> files;
    for (const QString& file : QFileDialog::getOpenFileNames(this, tr("Photos"), pictures_folder()))
        files.emplace_back(to_utf8(file));
    if (!files.empty()) emit chosen(files);
}

// A place to drop on: a dashed line round a sheet of paper.
void SourceChoice::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(outline_colour(palette()), 2, Qt::DashLine));
    painter.setBrush(card_colour(palette()));
    painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 14, 14);
}

}  // namespace quarterturn
