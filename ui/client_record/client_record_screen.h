#pragma once

#include "indexer/sheet/client_content.h"
#include "ui/shell/screen.h"

class QLabel;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class ClientSearch;
class EmptyPage;
class ErasePart;
class Notice;
class PhotosCard;
class Session;
class WaysOut;

// Everything that is kept of one client on one page, and the ways to give it to her.
class ClientRecordScreen : public Screen {
    Q_OBJECT
  public:
    explicit ClientRecordScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

    void save_pdf(const Path& file);
    // PDF, JSON and CSV in a new folder.
    void save_everything(const Path& folder);

  private:
    void build();
    QWidget* build_page();
    QLayout* build_ways_out();
    void paint_once_laid_out();
    void show_record(const ClientRecord& record);
    void show_photos(const std::vector<PhotoSection>& sections);
    void ask_where_pdf();
    void ask_where_everything();

    Session& session_;
    std::optional<ClientId> client_;
    std::string shown_;  // the record as it stands on screen
    std::string name_;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* page_;
    ClientSearch* search_;
    QLabel* title_;
    QLabel* note_;
    Notice* notice_;
    WaysOut* ways_;
    ErasePart* erase_;
    QVBoxLayout* cards_;
    std::vector<PhotosCard*> photos_;
};

}  // namespace quarterturn
