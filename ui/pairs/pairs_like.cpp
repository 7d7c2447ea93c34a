// Finding her looks that are most like a pair or a picture that a client brings.

#include <QFileDialog>
#include <QPointer>
#include <QPushButton>
#include <QStackedWidget>
#include <QStandardPaths>

#include "indexer/portfolio/inspiration.h"
#include "indexer/portfolio/more_like_this.h"
#include "ui/pairs/fact_words.h"
#include "ui/pairs/kept_pictures_page.h"
#include "ui/pairs/like_bar.h"
#include "ui/pairs/pair_edits.h"
#include "ui/pairs/pair_page.h"
#include "ui/pairs/pairs_screen.h"
#include "ui/pairs/wall_page.h"
#include "ui/shell/session.h"
#include "ui/widgets/choice_list.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/progress_panel.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::size_t most_alike = 60;  // more than one looks through

QString joined_reasons(const std::vector<std::string>& reasons) {
    QStringList words;
    for (const std::string& reason : reasons) words << from_utf8(reason);
    return words.join(QStringLiteral(", "));
}

}  // namespace

void PairsScreen::ask_picture() {
    const QString file = QFileDialog::getOpenFileName(
        this, tr("A picture to find looks like it"),
        QStandardPaths::writableLocation(QStandardPaths::PicturesLocation));
    if (!file.isEmpty()) look_like_picture(to_utf8(file));
}

void PairsScreen::look_like_picture(const Path& picture) {
    const QString name = from_utf8(picture.filename().native());
    look_like({.sentence = tr("Your looks most like %1").arg(isolated(name)), .file = picture});
}

void PairsScreen::look_like_kept(const Inspiration& picture) {
    session_.attempt([&] {
        const auto client = session_.library().clients().find(picture.client);
        //: the name of a picture's file, and the client who brought it
        const QString sentence =
            tr("Your looks most like %1, from %2")
                .arg(isolated(from_utf8(picture.name)),
                     isolated(from_utf8(client ? client->name : std::string())));
        look_like({.sentence = sentence,
                   .file = inspiration_file(session_.library(), picture),
                   .kept = true});
    });
}

void PairsScreen::look_like(const Like& picture) {
    find_like(picture, [file = picture.file](Library& library, Decoder& decoder) {
        return pairs_like(library, decoder, file, std::nullopt, most_alike);
    });
}

void PairsScreen::look_like_pair() {
    if (!pair_->pair()) return;
    const Pair pair = *pair_->pair();
    //: whose pair, and which look
    const QString whose =
        tr("Looks most like %1: %2").arg(isolated(pairs_->client(pair)), pairs_->look(pair));
    find_like({.sentence = whose, .from = pair.id},
              [pair](Library& library, Decoder&) { return pairs_like(library, pair, most_alike); });
}

// What was not measured yet is measured first.
void PairsScreen::find_like(const Like& known, const FindLike& find) {
    if (finding_) return;
    const int asked = ++asked_;
    finding_ = session_.start<Like>(
        [&decoder = session_.decoder(), known, find](Library& library, Job& job) {
            const auto progress = [&job](std::int64_t done, std::int64_t total) {
                job.progress({done, total, {}, {}});
            };
            Like like = known;
            like.failed = measure_hair(library, decoder, progress, job.stop_token()).failed;
            like.pairs = find(library, decoder);
            if (!like.file.empty()) {
                like.picture = to_image(small_picture_in(library, decoder, like.file));
            }
            return like;
        },
        [screen = QPointer(this), asked](const Like& like) {
            if (!screen || screen->asked_ != asked) return;
            screen->session_.attempt([&] { screen->show_like(like); });
        });
    Job* job = finding_;
    connect(job, &Job::progressed, work_, [this, asked](const JobProgress& progress) {
        work_->setVisible(!fills_screen() && asked == asked_);
        work_->show_progress(progress.done, progress.total, progress.file, progress.left);
    });
    connect(job, &Job::failed, this, [this](const QString& why) {
        wall_->notice().say(why);
        kept_->say(why);
    });
    connect(job, &Job::ended, work_, &QWidget::hide);
    connect(work_, &ProgressPanel::pause_asked, job, &Job::pause);
    connect(work_, &ProgressPanel::stop_asked, job, &Job::stop);
}

// Who goes another way does not want to be fetched back from it.
void PairsScreen::give_up_finding() {
    ++asked_;
    waiting_.reset();
    work_->hide();
    if (Job* job = std::exchange(finding_, nullptr)) job->stop();
}

// While the whole screen is filled it waits: a client may be looking.
void PairsScreen::show_like(const Like& like) {
    if (fills_screen()) {
        waiting_ = like;
        return;
    }
    PairsOnWall found;
    std::vector<PairId> ids;
    for (const LikePair& each : like.pairs) {
        if (ids.size() == most_alike) break;
        ids.push_back(each.pair);
        found.reasons[each.pair] = joined_reasons(each.reasons);
    }
    found.pairs = session_.library().pairs().these(ids);
    picture_ = like.file;
    QString failed;
    for (const std::string& sentence : like.failed) {
        failed += (failed.isEmpty() ? QString() : QStringLiteral("\n")) + from_utf8(sentence);
    }
    work_->hide();
    wall_->notice().say(failed);
    pages_->setCurrentWidget(wall_);  // before it takes the keyboard
    wall_->show_like(like.sentence, like.picture, std::move(found), like.from);
    if (like.kept) wall_->like_bar().keep_button().hide();
}

void PairsScreen::ask_whose_picture() {
    const auto clients = session_.library().clients().all();
    QStringList names;
    for (const Client& client : clients) names << from_utf8(client.name);
    LikeBar& bar = wall_->like_bar();
    auto* list = new ChoiceList(tr("Whose picture it is"), names, &bar);
    connect(list, &ChoiceList::chosen, this, [this, clients](int entry) {
        const Client& client = clients.at(static_cast<std::size_t>(entry));
        if (session_.change_records(keep_picture(picture_, client.id, session_.now()))) {
            session_.say(tr("The picture is kept with %1.").arg(from_utf8(client.name)));
        }
    });
    list->open_below(bar.keep_button());
}

}  // namespace quarterturn
