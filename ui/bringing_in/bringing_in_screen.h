#pragma once

#include <QPointer>

#include "indexer/intake/preview.h"
#include "ui/shell/screen.h"

class QVBoxLayout;

namespace quarterturn {

class CardFinder;
class Job;
class Notice;
class ProgressPanel;
class SettlePart;
class SourceChoice;
struct ImportOutcome;

// Bringing photos in, step by step in one place: where they are, what is there, how far it is, what
// came of it. Below stands what only she can settle.
class BringingInScreen : public Screen {
    Q_OBJECT
  public:
    explicit BringingInScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    // Shows what bringing these in would do.
    void look_at(const std::vector<Path>& sources);

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    void show_step(QWidget* step);  // in place of the one before
    void show_choice();
    void offer_to_go_on();
    void leave_unfinished();
    void show_preview(const ImportPreview& preview);
    void show_report(const ImportOutcome& outcome);
    void show_progress_of(Job* job, const QString& work);
    void bring_in();
    void go_round_the_head(const ImportOutcome& outcome);

    Session& session_;
    CardFinder* finder_;
    QVBoxLayout* step_;
    Notice* notice_;
    SettlePart* settle_;
    QPointer<SourceChoice> choice_;  // while she is asked
    std::vector<Path> sources_;
    bool at_work_ = false;
    Place place_{.moment = Moment::bringing_in};
};

}  // namespace quarterturn
