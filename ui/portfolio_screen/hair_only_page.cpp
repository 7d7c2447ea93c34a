#include "ui/portfolio_screen/hair_only_page.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QPointer>

#include "indexer/store/hair_only_table.h"
#include "ui/portfolio_screen/part_view.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/flow_layout.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/page.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/photo_tile.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int hair_only_side_steps = 76;
const QRectF first_part(0, 0, 1, 0.4);  // hair is above

QString way_words(HairOnlyWay way) {
    return way == HairOnlyWay::crop ? HairOnlyPage::tr("Crop") : HairOnlyPage::tr("Cover");
}

QString found_words(const JudgedPicture& picture) {
    return picture.face_found
               ? HairOnlyPage::tr(
                     "The search found what may be a face in this picture, so that it "
                     "cannot be confirmed: choose another, or draw the part yourself.")
               : HairOnlyPage::tr("The search found no face in this picture.");
}

QString short_words(const JudgedPicture& picture) {
    //: a crop or a cover
    return picture.face_found ? HairOnlyPage::tr("%1: a face?").arg(way_words(picture.how.way))
                              : HairOnlyPage::tr("%1: no face").arg(way_words(picture.how.way));
}

}  // namespace

HairOnlyPage::HairOnlyPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), view_(new PartView) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space(5));
    row->addWidget(view_, 1);
    QScrollArea* side = make_scrolling_side(build_side());
    side->setFixedWidth(space(hair_only_side_steps));
    row->addWidget(side);
}

QWidget* HairOnlyPage::build_side() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(space(1), 0, space(4), space(4));
    column->setSpacing(space(2));
    name_ = make_heading({});
    words_ = make_text({});
    proposals_ = new FlowLayout(space(2));
    notice_ = new Notice;
    confirm_ = make_next_button(tr("I looked: it shows no face"));
    confirmed_ = make_text({});
    forget_ = make_button(tr("It counts no longer"));
    QPushButton* back = make_button(tr("Back to choosing"));
    connect(confirm_, &QPushButton::clicked, this, &HairOnlyPage::confirm);
    connect(forget_, &QPushButton::clicked, this, &HairOnlyPage::forget);
    connect(back, &QPushButton::clicked, this, &HairOnlyPage::done);
    column->addWidget(name_);
    column->addWidget(confirmed_);
    column->addWidget(forget_, 0, Qt::AlignLeading);
    column->addLayout(proposals_);
    column->addWidget(words_);
    column->addWidget(notice_);
    column->addWidget(make_quiet(tr(hair_only_caution)));
    column->addWidget(confirm_, 0, Qt::AlignLeading);
    column->addSpacing(space(3));
    column->addWidget(build_own_part());
    column->addWidget(back, 0, Qt::AlignLeading);
    column->addStretch();
    return side;
}

QWidget* HairOnlyPage::build_own_part() {
    auto* own = new QWidget;
    auto* column = new QVBoxLayout(own);
    column->setContentsMargins(0, 0, 0, space(3));
    column->setSpacing(space(2));
    way_ = new QComboBox;
    way_->addItem(tr("keep it, and nothing else"), static_cast<int>(HairOnlyWay::crop));
    way_->addItem(tr("cover it softly"), static_cast<int>(HairOnlyWay::cover));
    way_->setAccessibleName(tr("What becomes of the part"));
    QPushButton* draw = make_button(tr("Draw a part"));
    make_ = make_button(tr("Make the picture"));
    connect(draw, &QPushButton::clicked, this, &HairOnlyPage::draw_own);
    connect(make_, &QPushButton::clicked, this, &HairOnlyPage::make_own);
    column->addWidget(make_heading(tr("A part of your own")));
    column->addWidget(
        make_quiet(tr("Draw a box on the photo, or move it with the arrow keys; with "
                      "Shift they change its size.")));
    column->addWidget(way_);
    auto* row = new FlowLayout(space(2));
    row->addWidget(draw);
    row->addWidget(make_);
    column->addLayout(row);
    return own;
}

void HairOnlyPage::open(const Photo& photo) {
    photo_ = photo;
    pictures_.clear();
    tiles_.clear();
    empty_layout(proposals_);
    looked_at_.reset();
    whole_ = {};
    view_->show_picture({}, {});
    name_->setText(tr("Hair only: %1").arg(isolated(from_utf8(photo.file.name))));
    words_->setText({});
    show_confirmed();
    Job* job = session_.start<HairOnlyPictures>(
        [photo, today = session_.today(), &decoder = session_.decoder()](Library& library, Job&) {
            return hair_only_pictures(library, decoder, photo, today);
        },
        [page = QPointer(this), id = photo.id](const HairOnlyPictures& found) {
            if (page && page->photo_.id == id) page->take(found);
        });
    wait_for(*job, tr("Looking for the face…"));
}

// While it lasts nothing else is asked of this page.
void HairOnlyPage::wait_for(Job& job, const QString& what) {
    notice_->say(what);
    setEnabled(false);
    connect(&job, &Job::ended, this, [this, what] {
        setEnabled(true);
        if (notice_->said() == what) notice_->say({});
        if (!isVisible()) return;
        QWidget* next = confirm_->isEnabled() ? static_cast<QWidget*>(confirm_) : view_;
        next->setFocus();
    });
    connect(&job, &Job::failed, notice_, &Notice::say);
}

void HairOnlyPage::take(const HairOnlyPictures& found) {
    whole_ = found.whole;
    for (const JudgedPicture& picture : found.proposed) offer(picture);
    if (!pictures_.empty()) return look_at(0);
    draw_own();
    words_->setText(tr("No face was found to leave out. Draw the part yourself."));
}

void HairOnlyPage::offer(JudgedPicture picture) {
    auto* tile = new PhotoTile(photo_.id, {space(30), space(36)});
    PhotoLook look;
    look.picture = picture.image;
    look.caption = short_words(picture);
    tile->show_look(look);
    connect(tile, &PhotoTile::clicked, this,
            [this, number = pictures_.size()] { look_at(number); });
    proposals_->addWidget(tile);
    tiles_.push_back(tile);
    pictures_.push_back(std::move(picture));
}

void HairOnlyPage::look_at(std::size_t number) {
    looked_at_ = number;
    const JudgedPicture& picture = pictures_[number];
    view_->show_picture(picture.image, found_words(picture));
    words_->setText(found_words(picture));
    confirm_->setEnabled(!picture.face_found);
    make_->setEnabled(false);
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        PhotoLook look = tiles_[i]->look();
        look.current = i == number;
        tiles_[i]->show_look(look);
    }
}

void HairOnlyPage::draw_own() {
    if (whole_.isNull()) return;
    view_->ask_part(whole_, tr("The whole photo, with the part you draw"), first_part);
    view_->setFocus();
    words_->setText({});
    confirm_->setEnabled(false);
    make_->setEnabled(true);
}

void HairOnlyPage::make_own() {
    HairOnly how;
    how.way = static_cast<HairOnlyWay>(way_->currentData().toInt());
    const QRectF part = view_->part();
    how.x = part.x();
    how.y = part.y();
    how.width = part.width();
    how.height = part.height();
    Job* job = session_.start<JudgedPicture>(
        [photo = photo_, how, today = session_.today(), &decoder = session_.decoder()](
            Library& library, Job&) { return judged_picture(library, decoder, photo, how, today); },
        [page = QPointer(this), id = photo_.id](JudgedPicture picture) {
            if (!page || page->photo_.id != id) return;
            page->offer(std::move(picture));
            page->look_at(page->pictures_.size() - 1);
        });
    wait_for(*job, tr("Making the picture…"));
}

void HairOnlyPage::confirm() {
    if (!looked_at_) return;
    Job* job = session_.start<HairOnly>(
        [how = pictures_[*looked_at_].how, now = session_.now(), &decoder = session_.decoder()](
            Library& library, Job&) { return confirm_hair_only(library, decoder, how, now); },
        [page = QPointer(this)](const HairOnly&) {
            if (page) emit page->done();
        });
    wait_for(*job, tr("Taking down that you looked…"));
}

void HairOnlyPage::forget() {
    const bool gone = session_.attempt([this] { forget_hair_only(session_.library(), photo_); });
    if (!gone) return;
    show_confirmed();
    session_.touch();
}

void HairOnlyPage::show_confirmed() {
    std::optional<HairOnly> confirmed;
    session_.attempt(
        [&] { confirmed = HairOnlyTable(session_.library().database()).of(photo_.id); });
    confirmed_->setVisible(confirmed.has_value());
    forget_->setVisible(confirmed.has_value());
    confirm_->setEnabled(false);
    make_->setEnabled(false);
    if (!confirmed) return;
    //: a crop or a cover, and a day
    confirmed_->setText(
        tr("Confirmed: %1, %2. Where only her hair may be shown, an export to a folder and a page "
           "for a website take it.")
            .arg(way_words(confirmed->way), shown(date_of(confirmed->confirmed_at))));
}

void HairOnlyPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit done();
    } else {
        QWidget::keyPressEvent(event);
    }
}

}  // namespace quarterturn
